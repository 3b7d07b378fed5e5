package rushlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The last column says where each expected value comes from. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class DifferenceTest {
    // spotless:off
    @ParameterizedTest
    @CsvSource({
        "56, 70, 48, 80, 0.2000,  0.0524, 0.3339, published: Newcombe 1998b Table II method 10",
        " 9, 10,  3, 10, 0.6000,  0.1705, 0.8090, published: same",
        " 6,  7,  2,  7, 0.5714,  0.0582, 0.8062, published: same",
        " 5, 56,  0, 29, 0.0893, -0.0381, 0.1926, published: same",
        " 0, 10,  0, 20, 0.0000, -0.1611, 0.2775, published: same",
        "10, 10,  0, 20, 1.0000,  0.6791, 1.0000, published: same",
        " 0, 10,  0, 10, 0.0000, -0.2775, 0.2775, from memory: same table",
        "10, 10,  0, 10, 1.0000,  0.6075, 1.0000, from memory: same table",
        " 7, 34,  1, 34, 0.1765,  0.0189, 0.3404, published: Fagerland Lydersen and Laake 2017 ch. 4",
        " 5, 12,  1, 13, 0.3397, -0.0002, 0.6110, computed in R"})
    void the_newcombe_interval_agrees_with_its_tables(
            int x1, int n1, int x2, int n2, double d, double low, double high, String source) {
        var difference = new Difference(new Rate(x1, n1), new Rate(x2, n2));

        assertThat(difference.observed()).as(source).isCloseTo(d, within(0.00005));
        assertThat(difference.newcombe(0.95).low()).as(source).isCloseTo(low, within(0.00005));
        assertThat(difference.newcombe(0.95).high()).as(source).isCloseTo(high, within(0.00005));
    }

    @ParameterizedTest
    @CsvSource({
        " 3,  4,  1,  4, ABOVE, 0.2428571, 0.1285714, published (tea tasting; R documentation); mid-p from memory: Agresti 0.129",
        " 2, 17, 10, 13, BELOW, 0.0004651809, 0.0002403, from memory: Fisher twins; mid-p by hand from 136 x 286 / 86493225"})
    void one_sided_tests_agree_with_their_sources(
            int x1, int n1, int x2, int n2, Side side, double fisher, double midP, String source) {
        var table = new Fourfold(new Rate(x1, n1), new Rate(x2, n2));

        assertThat(table.fisher(side)).as(source).isCloseTo(fisher, within(5e-8));
        assertThat(table.midP(side)).as(source).isCloseTo(midP, within(5e-7));
    }

    @ParameterizedTest
    @CsvSource({
        "3,  4,  1,  4, 0.4857143,  0.3714286, published (tea tasting); mid-p by hand: half of 16/70 less",
        "2, 17, 10, 13, 0.0005367241, 0.0003119, from memory: Fisher twins; mid-p by hand as above",
        "0, 16, 15, 72, 0.06286666, 0.04465969, published: Fagerland Lydersen and Laake 2017"})
    void two_sided_tests_agree_with_their_sources(
            int x1, int n1, int x2, int n2, double fisher, double midP, String source) {
        var table = new Fourfold(new Rate(x1, n1), new Rate(x2, n2));

        assertThat(table.fisher()).as(source).isCloseTo(fisher, within(5e-8));
        assertThat(table.midP()).as(source).isCloseTo(midP, within(5e-7));
    }

    @ParameterizedTest
    @CsvSource({
        "56, 70, 48, 80, 0.9962737, computed in R (quadrature)",
        " 5, 12,  1, 13, 0.9786308, computed in R (quadrature; 10^6 draws gave 0.9783)"})
    void the_chance_of_being_larger_agrees_with_r(int x1, int n1, int x2, int n2, double expected, String source) {
        var difference = new Difference(new Rate(x1, n1), new Rate(x2, n2));

        assertThat(difference.probabilityOver(0)).as(source).isCloseTo(expected, within(5e-8));
    }
    // spotless:on

    /** The dossier gives three digits, computed in R: Fisher alone would say "nothing here", mid-p leans. */
    @Test
    void mid_p_is_less_shy_than_fisher_at_small_counts() {
        var table = new Fourfold(new Rate(5, 12), new Rate(1, 13));

        assertThat(table.fisher()).isCloseTo(0.073, within(0.0005));
        assertThat(table.midP()).isCloseTo(0.044, within(0.0005));
    }

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_quadrature_agrees_with_a_much_finer_sum_over_the_other_rate(long seed) {
        Random random = new Random(seed);
        Rate first = rate(random, seed < 10 ? 12 : 300);
        Rate second = rate(random, seed < 20 ? 12 : 300);
        double d = seed % 3 == 0 ? 0 : (1 + random.nextInt(30)) / 100.0;

        assertThat(new Difference(first, second).probabilityOver(d)).isCloseTo(slow(first, second, d), within(1e-8));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void turning_the_difference_turns_the_chance(long seed) {
        Random random = new Random(seed);
        var difference = new Difference(rate(random, 60), rate(random, 60));
        double d = random.nextInt(40) / 100.0;

        assertThat(difference.probabilityOver(d) + difference.turned().probabilityOver(-d))
                .isCloseTo(1, within(1e-8));
        assertThat(difference.probabilityOver(d + 0.05)).isLessThanOrEqualTo(difference.probabilityOver(d));
    }

    @Test
    void a_difference_that_cannot_be_is_refused() {
        var same = new Difference(new Rate(1, 2), new Rate(1, 2));

        assertThatThrownBy(() -> same.probabilityOver(1))
                .hasMessage("A difference of rates lies between -1 and 1, but this is 1.0");
        assertThat(same.probabilityOver(0)).isCloseTo(0.5, within(1e-10));
    }

    private static Rate rate(Random random, int most) {
        int n = random.nextInt(most);
        return new Rate(random.nextInt(n + 1), n);
    }

    /** Integrates over the second rate instead, by the midpoint rule on q = (1 - d) sin^2 t with its plain density. */
    private static double slow(Rate first, Rate second, double d) {
        var above = BetaDistribution.of(first.events() + 0.5, first.opportunities() - first.events() + 0.5);
        var density = BetaDistribution.of(second.events() + 0.5, second.opportunities() - second.events() + 0.5);
        int steps = 40_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double t = Math.PI / 2 * (i + 0.5) / steps;
            double q = (1 - d) * Math.sin(t) * Math.sin(t);
            sum += density.density(q) * above.survivalProbability(q + d) * (1 - d) * Math.sin(2 * t);
        }
        return sum * Math.PI / 2 / steps;
    }
}
