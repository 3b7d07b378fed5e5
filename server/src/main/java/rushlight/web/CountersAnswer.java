package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Taxonomy;

/**
 * What goes with a move when he is answered, as programs read it.
 *
 * @param move slug of the move, absent where any was meant
 * @param when slug of the blocker's answer, absent where any was meant
 * @param counters best first
 */
public record CountersAnswer(Optional<String> move, Optional<String> when, List<Entry> counters) {
    /**
     * One counter.
     *
     * @param counter slug of the move
     * @param trigger slug of the answer it is taught for, absent where it is general
     * @param rank 1 is the first choice of the book
     * @param side which way it goes
     * @param timing {@code read}, {@code in-rep}, {@code next-rep}
     * @param because the reason in a sentence
     * @param requires slugs of what must be owned first
     * @param support {@code strong}, {@code fair} or {@code common-practice}
     * @param local whether the user's own file teaches it
     * @param seen what the film of the data folder shows of it, absent where there is no film
     */
    public record Entry(
            String counter,
            Optional<String> trigger,
            int rank,
            String side,
            Set<String> timing,
            String because,
            List<String> requires,
            String support,
            boolean local,
            Optional<Seen> seen) {}

    /**
     * Reps on film.
     *
     * @param reps in how many he went to it after that answer
     * @param won how many of them he won
     */
    public record Seen(int reps, int won) {}

    /** One entry of the book. */
    public static Entry entry(Pairing pairing, Taxonomy taxonomy, Optional<Seen> seen) {
        return new Entry(
                pairing.counter(),
                pairing.trigger(),
                pairing.rank(),
                pairing.side(),
                pairing.timing(),
                pairing.because(),
                taxonomy.requires(pairing.counter()),
                pairing.support(),
                pairing.local(),
                seen);
    }
}
