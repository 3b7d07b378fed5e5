package rushlight.evidence.raters;

import java.util.HashSet;
import java.util.Set;

/** Distances of two sets of tags, 0 (equal) to 1 (nothing in common); two empty sets are equal. */
public final class SetDistance {
    private static final double SUBSET = 2.0 / 3;
    private static final double OVERLAP = 1.0 / 3;

    private SetDistance() {}

    /** One less the share of the tags in both among those in either: every partial overlap counts in proportion (Jaccard). */
    public static <T> double jaccard(Set<T> one, Set<T> other) {
        Set<T> all = new HashSet<>(one);
        all.addAll(other);
        return all.isEmpty() ? 0 : 1 - (double) both(one, other).size() / all.size();
    }

    /**
     * MASI (Passonneau 2006): 1 - J * M, with J the share in both and M = 1 for equal sets, 2/3 where one holds the other,
     * 1/3 where each has something of its own, 0 for nothing in common. Stricter than Jaccard.
     */
    public static <T> double masi(Set<T> one, Set<T> other) {
        return 1 - (1 - jaccard(one, other)) * monotony(one, other);
    }

    private static <T> double monotony(Set<T> one, Set<T> other) {
        if (one.equals(other)) {
            return 1;
        }
        if (one.containsAll(other) || other.containsAll(one)) {
            return SUBSET;
        }
        return both(one, other).isEmpty() ? 0 : OVERLAP;
    }

    private static <T> Set<T> both(Set<T> one, Set<T> other) {
        Set<T> both = new HashSet<>(one);
        both.retainAll(other);
        return both;
    }
}
