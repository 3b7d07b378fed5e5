package rushlight.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Many tests at once, so that of those called real only a known part is luck: the false discovery rate of Benjamini and
 * Hochberg (1995, Journal of the Royal Statistical Society B 57:289-300), for tests that are independent or lean the same way.
 */
public final class BenjaminiHochberg {
    /** The part of luck that is allowed among what is called real of one prospect. */
    public static final double ALLOWED = 0.10;

    private BenjaminiHochberg() {}

    /**
     * Each p adjusted for all of them, in the same order: a test stands where its adjusted p is no more than the part of luck
     * that is allowed.
     *
     * @param ps the p of each test, 0 to 1
     */
    public static List<Double> adjusted(List<Double> ps) {
        List<Integer> falling = IntStream.range(0, ps.size())
                .boxed()
                .sorted((a, b) -> Double.compare(ps.get(b), ps.get(a)))
                .toList();
        Double[] adjusted = new Double[ps.size()];
        double least = 1;
        for (int i = 0; i < falling.size(); i++) {
            int rank = ps.size() - i;
            least = Math.min(least, ps.get(falling.get(i)) * ps.size() / rank);
            adjusted[falling.get(i)] = least;
        }
        return Arrays.asList(adjusted);
    }
}
