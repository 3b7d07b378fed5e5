package rushlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.numbers.combinatorics.LogBinomialCoefficient;
import org.apache.commons.numbers.gamma.LogBeta;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Expected values were computed in R unless the comment beside them says otherwise. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class OutlookTest {
    // spotless:off
    @ParameterizedTest
    @CsvSource({
        "3,  7, 0.20, ABOVE, 0.7744, 0.0000,  4",
        "0, 14, 0.10, BELOW, 0.8837, 0.0016,  4",
        "4, 11, 0.25, BELOW, 0.0000, 0.4543, 13",
        "2, 10, 0.20, ABOVE, 0.0958, 0.0000,  0",
        "1, 12, 0.20, ABOVE, 0.0022, 0.5384,  6",
        "2,  6, 0.20, ABOVE, 0.5071, 0.0000, 10"})
    void the_next_ten_and_thirty_agree_with_r(
            int x, int n, double at, Side side, double confirmed, double cleared, int half) {
        Line line = new Line(at, side, 0);
        Outlook ten = Outlook.of(new Rate(x, n), line, 10);

        assertThat(ten.confirmed()).isCloseTo(confirmed, within(0.00005));
        assertThat(ten.cleared()).isCloseTo(cleared, within(0.00005));
        assertThat(Outlook.of(new Rate(x, n), line, 30).evenChance()).isEqualTo(half);
    }

    /** Smallest n from which a true rate stays confirmed (cleared) with a chance of .80: exact binomial. */
    @ParameterizedTest
    @CsvSource({
        "0.20, ABOVE, 0.45, CONFIRMED,  21", "0.20, ABOVE, 0.40, CONFIRMED,  33", "0.20, ABOVE, 0.35, CONFIRMED,  56",
        "0.20, ABOVE, 0.30, CONFIRMED, 120", "0.10, BELOW, 0.00, CONFIRMED,  18", "0.10, BELOW, 0.02, CONFIRMED,  54",
        "0.20, ABOVE, 0.05, CLEARED,    33", "0.20, ABOVE, 0.10, CLEARED,    85"})
    void planning_agrees_with_r(double at, Side side, double truth, Verdict word, int expected) {
        Line line = new Line(at, side, 0);
        int from = IntStream.iterate(200, n -> power(line, truth, word, n) >= 0.80, n -> n - 1).min().orElseThrow();

        assertThat(from).isEqualTo(expected);
    }
    // spotless:on

    /**
     * Published: Lee and Liu 2008, Clinical Trials 5:93-106, p. 97, 0.5656: 16 of 23 now, 40 in all, prior Beta(.6, .4), the
     * chance that Pr(rate over .60) ends over .90. The same predictive as ours with another prior and rule.
     */
    @Test
    void the_beta_binomial_predictive_is_the_published_one() {
        double sum = 0;
        for (int more = 0; more <= 17; more++) {
            double log = LogBinomialCoefficient.value(17, more)
                    + LogBeta.value(16.6 + more, 24.4 - more)
                    - LogBeta.value(16.6, 7.4);
            boolean passes = BetaDistribution.of(16.6 + more, 24.4 - more).survivalProbability(0.60) > 0.90;
            sum += passes ? Math.exp(log) : 0;
        }
        assertThat(sum).isCloseTo(0.5656, within(0.00005));
    }

    @Test
    void three_chances_and_one_event_want_about_thirteen_more() {
        assertThat(new Remembered().moreNeeded(new Rate(1, 3), new Line(0.20, Side.ABOVE, 6)))
                .hasValue(13);
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_short_walk_agrees_with_the_plain_recursion(long seed) {
        Random random = new Random(seed);
        int n = random.nextInt(40);
        Rate rate = new Rate(random.nextInt(n + 1), n);
        Line line = new Line(
                (1 + random.nextInt(19)) / 20.0, random.nextBoolean() ? Side.ABOVE : Side.BELOW, random.nextInt(16));
        double[] plain = plain(rate, line, 30, 1);

        Outlook outlook = Outlook.of(rate, line, 30);

        assertThat(outlook.confirmed()).isCloseTo(plain[0], within(1e-10));
        assertThat(outlook.cleared()).isCloseTo(plain[1], within(1e-10));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void what_is_remembered_is_what_a_fresh_reckoning_gives(long seed) {
        Random random = new Random(seed);
        Remembered remembered = new Remembered();
        for (int i = 0; i < 40; i++) {
            int n = random.nextInt(8);
            Rate rate = new Rate(random.nextInt(n + 1), n);
            Line line = new Line(
                    random.nextBoolean() ? 0.2 : 0.5,
                    random.nextBoolean() ? Side.ABOVE : Side.BELOW,
                    random.nextInt(3) * 5);

            OptionalInt first = remembered.moreNeeded(rate, line);

            assertThat(first).isEqualTo(new Remembered().moreNeeded(rate, line));
            assertThat(remembered.moreNeeded(rate, line)).isEqualTo(first);
            assertThat(remembered.shown(rate)).isEqualTo(rate.jeffreys(Rate.SHOWN));
        }
    }

    @Test
    void a_settled_count_needs_no_more() {
        assertThat(new Remembered().moreNeeded(new Rate(5, 12), new Line(0.20, Side.ABOVE, 6)))
                .isEmpty();
    }

    /** The recursion as the dossier's R script has it, over every path. Chances of {confirmed, cleared} from step k on. */
    private static double[] plain(Rate rate, Line line, int further, int k) {
        double[][][] known = new double[further + 2][further + 2][];
        return plain(rate, line, further, k, 0, known);
    }

    private static double[] plain(Rate rate, Line line, int further, int k, int more, double[][][] known) {
        if (k > further) {
            return new double[2];
        }
        if (known[k][more] == null) {
            double p = (rate.events() + more + 0.5) / (rate.opportunities() + k);
            double[] result = new double[2];
            for (int event = 0; event <= 1; event++) {
                double weight = event == 1 ? p : 1 - p;
                Verdict word = line.verdict(new Rate(rate.events() + more + event, rate.opportunities() + k));
                double[] rest = word == Verdict.CONFIRMED
                        ? new double[] {1, 0}
                        : word == Verdict.CLEARED
                                ? new double[] {0, 1}
                                : plain(rate, line, further, k + 1, more + event, known);
                result[0] += weight * rest[0];
                result[1] += weight * rest[1];
            }
            known[k][more] = result;
        }
        return known[k][more];
    }

    private static double power(Line line, double truth, Verdict word, int n) {
        if (truth == 0) {
            return line.verdict(new Rate(0, n)) == word ? 1 : 0;
        }
        var events = BinomialDistribution.of(n, truth);
        return IntStream.rangeClosed(0, n)
                .filter(x -> line.verdict(new Rate(x, n)) == word)
                .mapToDouble(events::probability)
                .sum();
    }
}
