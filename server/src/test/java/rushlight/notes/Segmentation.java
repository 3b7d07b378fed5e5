package rushlight.notes;

/**
 * How far two segmentations differ: Pk of Beeferman, Berger and Lafferty (Machine Learning 34, 1999) and WindowDiff of Pevzner
 * and Hearst (Computational Linguistics 28, 2002). A boundary stands after unit {@code i} where {@code [i]} is true.
 */
final class Segmentation {
    private Segmentation() {}

    /** The share of windows in which one has a boundary and the other none. */
    static double pk(boolean[] reference, boolean[] guess, int k) {
        int differing = 0;
        int windows = reference.length - k + 1;
        for (int i = 0; i < windows; i++) {
            differing += (count(reference, i, k) > 0) == (count(guess, i, k) > 0) ? 0 : 1;
        }
        return differing / (double) windows;
    }

    /** The share of windows in which the numbers of boundaries differ. */
    static double windowDiff(boolean[] reference, boolean[] guess, int k) {
        int differing = 0;
        int windows = reference.length - k + 1;
        for (int i = 0; i < windows; i++) {
            differing += count(reference, i, k) == count(guess, i, k) ? 0 : 1;
        }
        return differing / (double) windows;
    }

    /** Half the mean length of a segment, at least 2. */
    static int window(boolean[] reference) {
        int segments = 1 + count(reference, 0, reference.length);
        return Math.max(2, (int) Math.round((reference.length + 1) / (2.0 * segments)));
    }

    private static int count(boolean[] boundaries, int from, int length) {
        int found = 0;
        for (int i = from; i < from + length; i++) {
            found += boundaries[i] ? 1 : 0;
        }
        return found;
    }
}
