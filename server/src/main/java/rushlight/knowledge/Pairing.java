package rushlight.knowledge;

import java.util.Optional;
import java.util.Set;

/**
 * A counter that is taught for a blocker's answer to a move.
 *
 * @param id slug of the pairing itself
 * @param primary the move that is answered; empty means any move
 * @param trigger what the blocker shows; empty means the general counter to the move
 * @param counter what follows
 * @param rank 1 is the first choice
 * @param side which way the counter goes, as the book words it; may be empty
 * @param timing one or more of {@code read}, {@code in-rep}, {@code next-rep}
 * @param because the reason, in a sentence
 * @param support {@code strong}, {@code fair} or {@code common-practice}
 * @param local whether the user's own file added it
 */
public record Pairing(
        String id,
        Optional<String> primary,
        Optional<String> trigger,
        String counter,
        int rank,
        String side,
        Set<String> timing,
        String because,
        String support,
        boolean local) {
    public Pairing {
        timing = Set.copyOf(timing);
    }
}
