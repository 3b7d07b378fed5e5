package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import rushlight.archive.Book;
import rushlight.knowledge.Counters;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Taxonomy;

/**
 * What goes with a move when he is answered, as programs read it.
 *
 * @param move slug of the move, absent where any was meant
 * @param when slug of the blocker's answer, absent where any was meant
 * @param from slug of where he lines up, absent where any place was meant
 * @param counters best first
 * @param leftOut slugs of counters that are not used from there, in the order they would have stood
 */
public record CountersAnswer(
        Optional<String> move,
        Optional<String> when,
        Optional<String> from,
        List<Entry> counters,
        List<String> leftOut) {
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

    /**
     * What the book teaches off a move, against an answer, or both.
     *
     * @param from where he lines up: a counter the book uses from other places only is left out
     * @param film what film shows of a pairing, absent where there is no film
     */
    public static CountersAnswer of(
            Book book,
            Optional<String> move,
            Optional<String> when,
            Optional<String> from,
            Function<Pairing, Optional<Seen>> film) {
        Taxonomy taxonomy = book.taxonomy();
        Relations relations = new Relations(book.ontology());
        List<Pairing> pairings = new Counters(taxonomy).of(move, when);
        Predicate<Pairing> fromThere = pairing -> {
            List<String> places = relations.from(pairing.counter(), "from");
            return from.isEmpty()
                    || places.isEmpty()
                    || places.stream()
                            .anyMatch(place -> taxonomy.isA(place, from.get()) || taxonomy.isA(from.get(), place));
        };
        return new CountersAnswer(
                move,
                when,
                from,
                pairings.stream()
                        .filter(fromThere)
                        .map(pairing -> entry(pairing, taxonomy, film.apply(pairing)))
                        .toList(),
                pairings.stream()
                        .filter(fromThere.negate())
                        .map(Pairing::counter)
                        .distinct()
                        .toList());
    }

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
