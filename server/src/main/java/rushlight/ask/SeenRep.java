package rushlight.ask;

import java.util.List;
import rushlight.film.Prospect;
import rushlight.findings.Judged;
import rushlight.index.FoundRep;
import rushlight.index.Marked;
import rushlight.situation.Sighting;

/**
 * A rep behind an answer.
 *
 * @param prospect whose
 * @param game id of the game
 * @param sighting where it is to be seen
 * @param event whether it happened, or could have
 * @param note what was noted of it, where the note was asked for
 */
public record SeenRep(Prospect prospect, String game, Sighting sighting, boolean event, Marked note) {
    static SeenRep of(FoundRep found) {
        return new SeenRep(found.prospect(), found.game().id(), found.sighting(), found.event(), found.note());
    }

    static List<SeenRep> of(Prospect prospect, Judged judged) {
        Marked nothing = new Marked("", List.of());
        return judged.evidence().reps().stream()
                .map(rep -> new SeenRep(prospect, rep.game(), rep.sighting(), rep.event(), nothing))
                .toList();
    }
}
