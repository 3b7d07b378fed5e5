package rushlight.situation;

import java.util.Comparator;
import java.util.List;

/** One order for the parts of a situation: the statements of a graph have none. */
final class Canonical {
    private Canonical() {}

    static List<Situation> parts(List<Situation> parts) {
        List<Situation> sorted = parts.stream()
                .distinct()
                .sorted(Comparator.comparing(Situation::toString))
                .toList();
        if (sorted.size() < 2) {
            throw new IllegalArgumentException("All of or some of needs two different parts, but has " + sorted);
        }
        return sorted;
    }
}
