package rushlight.web;

import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.situation.Tape;

/**
 * A prospect in a list.
 *
 * @param reps reps on his tape, one reading each
 * @param games games they come from
 */
public record ProspectBrief(
        String id, String name, String position, String team, String classYear, int reps, int games) {
    /** The one whose tape this is. */
    public static ProspectBrief of(Tape tape) {
        return of(tape.prospect(), tape.size(), tape.games().size());
    }

    /** The one who was assessed. */
    static ProspectBrief of(Assessment one) {
        return of(one.prospect(), one.reps(), one.games());
    }

    private static ProspectBrief of(Prospect prospect, int reps, int games) {
        return new ProspectBrief(
                prospect.id(),
                prospect.name(),
                prospect.position(),
                prospect.team(),
                prospect.classYear(),
                reps,
                games);
    }
}
