package rushlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.inference.BinomialTest;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The last column says where each expected value comes from. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RateTest {
    // spotless:off
    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.2553, 0.3662, published: Newcombe 1998a Table I method 3",
        "15, 148, 0.0624, 0.1605, published: Newcombe 1998a as in the tests of R package ratesci",
        " 0,  20, 0.0000, 0.1611, published: same",
        " 1,  29, 0.0061, 0.1718, published: same",
        "13,  16, 0.5699, 0.9341, published: Fagerland Lydersen and Laake 2017 ch. 2",
        " 3,  10, 0.1078, 0.6032, published: Apache Commons Statistics tests (statsmodels)",
        " 0,  10, 0.0000, 0.2775, published: same",
        " 0,  25, 0.0000, 0.1332, from memory: Agresti vegetarians 0.133"})
    void the_wilson_interval_agrees_with_its_tables(int x, int n, double low, double high, String source) {
        assertInterval(new Rate(x, n).wilson(0.95), low, high, source);
    }

    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.2527, 0.3676, from memory: Newcombe 1998a Table I method 5",
        "15, 148, 0.0578, 0.1617, published: tests of R package ratesci",
        " 0,  20, 0.0000, 0.1684, published: same",
        " 1,  29, 0.0009, 0.1776, published: same",
        "13,  16, 0.5435, 0.9595, published: Fagerland Lydersen and Laake 2017 ch. 2",
        " 3,  10, 0.0667, 0.6525, published: Apache Commons Statistics tests (statsmodels)",
        " 0,  10, 0.0000, 0.3085, published: same",
        " 0,  25, 0.0000, 0.1372, from memory: Agresti vegetarians 0.137"})
    void the_clopper_pearson_interval_agrees_with_its_tables(int x, int n, double low, double high, String source) {
        assertInterval(new Rate(x, n).clopperPearson(0.95), low, high, source);
    }

    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.2545, 0.3656, computed in R",
        "15, 148, 0.0604, 0.1576, computed in R",
        " 0,  20, 0.0000, 0.1166, published: Brown Cai and DasGupta 2001 as quoted in the tests of R package ratesci",
        " 1,  29, 0.0037, 0.1501, published: same",
        "13,  16, 0.5792, 0.9442, published: Fagerland Lydersen and Laake 2017 ch. 2",
        " 3,  10, 0.0927, 0.6058, published: Apache Commons Statistics tests (statsmodels)",
        " 0,  10, 0.0000, 0.2172, published: same",
        " 0,  25, 0.0000, 0.0947, computed in R"})
    void the_jeffreys_interval_agrees_with_its_tables(int x, int n, double low, double high, String source) {
        assertInterval(new Rate(x, n).jeffreys(0.95), low, high, source);
    }

    @ParameterizedTest
    @CsvSource({
        "   5, 0.95, 0.4507, 0.00005, computed in R", "   5, 0.90, 0.3690, 0.00005, computed in R",
        "   6, 0.95, 0.3930, 0.00005, computed in R", "   6, 0.90, 0.3187, 0.00005, computed in R",
        "   7, 0.95, 0.3482, 0.00005, computed in R", "   7, 0.90, 0.2803, 0.00005, computed in R",
        "  14, 0.95, 0.1926, 0.00005, computed in R", "  14, 0.90, 0.1517, 0.00005, computed in R",
        "  20, 0.95, 0.1391, 0.00005, computed in R", "  20, 0.90, 0.1087, 0.00005, computed in R",
        "  30, 0.95, 0.0950, 0.00005, computed in R", "  30, 0.90, 0.0739, 0.00005, computed in R",
        " 100, 0.95, 0.0295, 0.00005, computed in R", " 100, 0.90, 0.0228, 0.00005, computed in R",
        " 167, 0.95, 0.0178, 0.00005, from memory: Hanley and Lippman-Hand 1983 (3/167)",
        " 167, 0.90, 0.0137, 0.00005, computed in R",
        " 300, 0.95, 0.009936, 0.0000005, published: rule of three (1 in 100)",
        "1500, 0.95, 0.001995, 0.0000005, published: rule of three (1 in 500)"})
    void a_clean_sheet_bounds_the_rate(int n, double confidence, double bound, double half, String source) {
        assertThat(NoEvents.bound(n, confidence)).as(source).isCloseTo(bound, within(half));
    }

    @ParameterizedTest
    @CsvSource({
        "3,  7, ABOVE, 0.20, 0.9257, computed in R",
        "0, 14, BELOW, 0.10, 0.9169, computed in R",
        "9, 20, ABOVE, 0.20, 0.9948, computed in R",
        "5, 12, ABOVE, 0.20, 0.9611, computed in R",
        "0,  0, ABOVE, 0.20, 0.7048, computed in R: what the prior says before any film"})
    void the_posterior_tail_agrees_with_r(int x, int n, Side side, double line, double expected, String source) {
        assertThat(new Rate(x, n).probability(side, line)).as(source).isCloseTo(expected, within(0.00005));
    }
    // spotless:on

    /** Fagerland, Lydersen and Laake 2017 (published): exact 0.02127, mid-p 0.01273 for 13 of 16 against one half. */
    @Test
    void the_library_gives_the_published_test_against_a_half() {
        double exact = BinomialTest.withDefaults().test(16, 13, 0.5).getPValue();

        assertThat(exact).isCloseTo(0.02127, within(0.000005));
        double at = org.apache.commons.statistics.distribution.BinomialDistribution.of(16, 0.5)
                .probability(13);
        assertThat(exact - at).as("mid-p, symmetric null").isCloseTo(0.01273, within(0.000005));
    }

    /** From memory: Bayesian Data Analysis 2.4, 437 of 980 and Laplace's births; the tail is a stress test of the library. */
    @Test
    void the_library_gives_the_posteriors_of_the_textbook() {
        var placenta = BetaDistribution.of(438, 544);

        assertThat(placenta.getMean()).isCloseTo(0.446, within(0.0005));
        assertThat(Math.sqrt(placenta.getVariance())).isCloseTo(0.016, within(0.0005));
        assertThat(placenta.inverseCumulativeProbability(0.025)).isCloseTo(0.415, within(0.0005));
        assertThat(placenta.inverseCumulativeProbability(0.975)).isCloseTo(0.477, within(0.0005));
        assertThat(BetaDistribution.of(241946, 251528).survivalProbability(0.5)).isCloseTo(1.15e-42, within(0.005e-42));
    }

    @Test
    void a_rate_that_cannot_be_is_refused_with_its_numbers() {
        assertThatThrownBy(() -> new Rate(3, 2))
                .hasMessage("Events are counted from 0 to the opportunities, but this is 3 of 2");
        assertThatThrownBy(() -> NoEvents.bound(0, 0.95)).hasMessage("A bound needs an opportunity, but there were 0");
    }

    @Test
    void no_opportunity_leaves_every_rate_possible() {
        assertThat(new Rate(0, 0).jeffreys(0.90)).isEqualTo(new Interval(0, 1));
        assertThat(new Rate(0, 0).share()).isEmpty();
    }

    static IntStream seeds() {
        return new Random(19).ints(60, 1, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void intervals_and_tails_behave_for_any_count(int n) {
        double line = (n % 17 + 1) / 20.0;
        for (int x = 0; x <= n; x++) {
            Rate rate = new Rate(x, n);
            Interval shown = rate.jeffreys(Rate.SHOWN);
            double over = rate.probability(Side.ABOVE, line);

            assertThat(shown.low()).isBetween(0.0, (double) x / n);
            assertThat(shown.high()).isBetween((double) x / n, 1.0);
            assertThat(over + rate.probability(Side.BELOW, line)).isCloseTo(1, within(1e-12));
            assertThat(rate.mirrored().probability(Side.BELOW, 1 - line)).isCloseTo(over, within(1e-9));
            if (x > 0) {
                assertThat(over).isGreaterThanOrEqualTo(new Rate(x - 1, n).probability(Side.ABOVE, line));
                assertThat(shown.low() > line).as("picture and word agree").isEqualTo(over > 0.95);
            }
        }
    }

    private static void assertInterval(Interval found, double low, double high, String source) {
        assertThat(found.low()).as(source).isCloseTo(low, within(0.00005));
        assertThat(found.high()).as(source).isCloseTo(high, within(0.00005));
    }
}
