package rushlight.film;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One reading as facts that can be counted: every facet with its values closed upward, so that a concept stands for
 * itself and for everything wider.
 *
 * @param rep which rep
 * @param evaluator who read it
 * @param tagged values by facet as they were tagged
 * @param closed values by facet with everything wider; rep classes and what was seen are facets too
 * @param numbers values of the integer facets
 */
public record RepFacts(
        RepId rep,
        String evaluator,
        Map<String, Set<String>> tagged,
        Map<String, Set<String>> closed,
        Map<String, Integer> numbers) {
    public RepFacts {
        tagged = Map.copyOf(tagged);
        closed = Map.copyOf(closed);
        numbers = Map.copyOf(numbers);
    }

    /** Whether some value of the facet is {@code value} or narrower. */
    public boolean has(String facet, String value) {
        return closed.getOrDefault(facet, Set.of()).contains(value);
    }

    /** The values of a facet as tagged. */
    public Set<String> tagged(String facet) {
        return tagged.getOrDefault(facet, Set.of());
    }

    /** The value of an integer facet. */
    public OptionalInt number(String facet) {
        Integer value = numbers.get(facet);
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }

    /** The same facts with one facet set, such as the rep classes the rules concluded. */
    public RepFacts with(String facet, Set<String> exact, Set<String> wider) {
        Map<String, Set<String>> newTagged = new HashMap<>(tagged);
        newTagged.put(facet, Set.copyOf(exact));
        Map<String, Set<String>> newClosed = new HashMap<>(closed);
        newClosed.put(facet, Set.copyOf(wider));
        return new RepFacts(rep, evaluator, newTagged, newClosed, numbers);
    }
}
