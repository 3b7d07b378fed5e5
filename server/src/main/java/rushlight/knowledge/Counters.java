package rushlight.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the book teaches off a move, against an answer, or both: best first. */
public final class Counters {
    private static final Set<String> WITHIN_THE_REP = Set.of("read", "in-rep");

    private static final int FAR = 1_000;

    private final Taxonomy taxonomy;

    /** Answers from the pairings of a book. */
    public Counters(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /**
     * The pairings that speak to a move and an answer. Rows about the very move stand before rows about its family, rows
     * about the very answer before rows about a narrower or a wider one, and general rows last; within those, what works
     * in the rep stands before what is for the next one, then the book's own rank decides. A counter stands once.
     *
     * @param move the move that was stopped; empty means whatever it was
     * @param when what the blocker showed; empty means whatever he showed, and then a counter stands once for each answer
     */
    public List<Pairing> of(Optional<String> move, Optional<String> when) {
        List<Pairing> matching = new ArrayList<>(taxonomy.pairings().stream()
                .filter(p -> moveDistance(p, move) < FAR && triggerDistance(p, when) < FAR)
                .toList());
        matching.sort(Comparator.<Pairing>comparingInt(p -> triggerDistance(p, when))
                .thenComparing(p ->
                        when.isPresent() ? "" : p.trigger().map(taxonomy::label).orElse(""))
                .thenComparing(p -> isWithinTheRep(p) ? 0 : 1)
                .thenComparing(p -> moveDistance(p, move))
                .thenComparing(Pairing::rank)
                .thenComparing(Pairing::counter));
        Map<String, Pairing> first = new LinkedHashMap<>();
        for (Pairing p : matching) {
            String key = when.isPresent()
                    ? p.counter()
                    : p.counter() + " " + p.trigger().orElse("");
            first.merge(key, p, (a, b) -> move.isEmpty() && b.rank() < a.rank() ? b : a);
        }
        List<Pairing> result = new ArrayList<>(first.values());
        if (move.isEmpty()) {
            result.sort(Comparator.<Pairing>comparingInt(p -> triggerDistance(p, when))
                    .thenComparing(p -> isWithinTheRep(p) ? 0 : 1)
                    .thenComparing(Pairing::rank));
        }
        return List.copyOf(result);
    }

    private static boolean isWithinTheRep(Pairing p) {
        return p.timing().stream().anyMatch(WITHIN_THE_REP::contains);
    }

    /** 0 for the very move, more for its families, most for rows about any move. */
    private int moveDistance(Pairing p, Optional<String> move) {
        if (move.isEmpty()) {
            return 0;
        }
        if (p.primary().isEmpty()) {
            return 2;
        }
        String primary = p.primary().get();
        if (primary.equals(move.get())) {
            return 0;
        }
        return taxonomy.isA(move.get(), primary) ? 1 : FAR;
    }

    /** 0 for the very answer, 1 for a narrower one of a coarse word, 2 for a wider one, 3 for rows about any answer. */
    private int triggerDistance(Pairing p, Optional<String> when) {
        if (when.isEmpty()) {
            return p.trigger().isEmpty() ? 0 : 1;
        }
        if (p.trigger().isEmpty()) {
            return 3;
        }
        String trigger = p.trigger().get();
        if (trigger.equals(when.get())) {
            return 0;
        }
        if (taxonomy.isA(trigger, when.get())) {
            return 1;
        }
        return taxonomy.isA(when.get(), trigger) ? 2 : FAR;
    }
}
