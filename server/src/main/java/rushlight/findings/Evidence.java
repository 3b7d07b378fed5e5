package rushlight.findings;

import java.util.List;
import rushlight.evidence.Rate;
import rushlight.situation.Sighting;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;

/** The reps behind a count. They are looked up only when someone asks. */
public final class Evidence {
    private final Tape tape;
    private final Sample sample;

    Evidence(Tape tape, Sample sample) {
        this.tape = tape;
        this.sample = sample;
    }

    /**
     * One rep behind a count.
     *
     * @param place its place on the tape, from 0
     * @param sighting where it is found
     * @param game id of the game
     * @param event whether it happened, or could have
     */
    public record Rep(int place, Sighting sighting, String game, boolean event) {}

    /**
     * The count of one game.
     *
     * @param game the game
     * @param rate events and opportunities in it
     */
    public record OfGame(TapedGame game, Rate rate) {}

    /** The counts of every game of the tape, in order of play; games without an opportunity among them. */
    public List<OfGame> byGame() {
        return tape.games().stream()
                .map(game -> new OfGame(game, sample.within(game.reps()).rate()))
                .toList();
    }

    /** The opportunities in the order of the tape. */
    public List<Rep> reps() {
        return sample.opportunities().stream()
                .mapToObj(rep -> new Rep(
                        rep, tape.sighting(rep), game(rep), sample.events().get(rep)))
                .toList();
    }

    private String game(int rep) {
        return tape.games().stream()
                .filter(game -> game.reps().get(rep))
                .map(TapedGame::id)
                .findFirst()
                .orElse("");
    }

    Tape tape() {
        return tape;
    }

    Sample sample() {
        return sample;
    }
}
