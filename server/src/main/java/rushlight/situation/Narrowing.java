package rushlight.situation;

import java.util.BitSet;
import java.util.Optional;

/**
 * A part of a tape that someone wants to look at alone. What is left out narrows nothing.
 *
 * @param game id of the only game
 * @param over side of the offense he stood over
 * @param opponent the only opponent, as written
 */
public record Narrowing(Optional<String> game, Optional<String> over, Optional<String> opponent) {
    private static final String OVER = "over";

    /** The whole tape. */
    public static Narrowing none() {
        return new Narrowing(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether it leaves the tape as it is. */
    public boolean keepsAll() {
        return game.isEmpty() && over.isEmpty() && opponent.isEmpty();
    }

    /** The reps of a tape that it keeps. */
    public BitSet kept(Tape tape) {
        BitSet kept = new BitSet(tape.size());
        kept.set(0, tape.size());
        over.ifPresent(side -> kept.and(tape.rows(OVER).getOrDefault(side, new BitSet())));
        for (TapedGame one : tape.games()) {
            boolean isLeftOut = game.filter(id -> !id.equals(one.id())).isPresent()
                    || opponent.filter(name -> !name.equals(one.opponent())).isPresent();
            if (isLeftOut) {
                kept.andNot(one.reps());
            }
        }
        return kept;
    }

    /** The tape with nothing but these reps, in the same order. */
    public Tape of(Tape tape) {
        return keepsAll() ? tape : new NarrowedTape(tape, kept(tape));
    }
}
