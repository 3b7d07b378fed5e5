package rushlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rushlight.evidence.Verdict.CLEARED;
import static rushlight.evidence.Verdict.CONFIRMED;
import static rushlight.evidence.Verdict.LIKELY;
import static rushlight.evidence.Verdict.NOT_ENOUGH_TAPE;
import static rushlight.evidence.Verdict.WATCH;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The words of the verdict table. All expected counts and chances were computed in R; no published table exists. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class VerdictTest {
    private static final Line FIFTH = new Line(0.20, Side.ABOVE, 0);

    // spotless:off
    @ParameterizedTest
    @CsvSource({
        " 1,  1, 0.20, ABOVE, 0.229, 1.000, 0.207, 1.000, 0.9595, NOT_ENOUGH_TAPE",
        " 0,  5, 0.10, BELOW, 0.000, 0.306, 0.000, 0.434, 0.7075, NOT_ENOUGH_TAPE",
        " 3,  7, 0.20, ABOVE, 0.175, 0.719, 0.158, 0.750, 0.9257, LIKELY",
        " 4,  8, 0.20, ABOVE, 0.239, 0.761, 0.215, 0.785, 0.9745, LIKELY",
        " 0,  9, 0.20, ABOVE, 0.000, 0.187, 0.000, 0.299, 0.0421, WATCH",
        " 4, 11, 0.25, BELOW, 0.166, 0.608, 0.152, 0.646, 0.1878, WATCH",
        " 2, 10, 0.20, ABOVE, 0.060, 0.452, 0.057, 0.510, 0.5335, WATCH",
        " 0, 14, 0.10, BELOW, 0.000, 0.126, 0.000, 0.215, 0.9169, LIKELY",
        " 5, 12, 0.20, ABOVE, 0.212, 0.648, 0.193, 0.680, 0.9611, CONFIRMED",
        " 9, 20, 0.20, ABOVE, 0.280, 0.630, 0.258, 0.658, 0.9948, CONFIRMED",
        " 0, 30, 0.10, BELOW, 0.000, 0.062, 0.000, 0.114, 0.9884, CONFIRMED",
        " 1, 30, 0.20, ABOVE, 0.006, 0.123, 0.006, 0.167, 0.0041, CLEARED",
        " 6, 40, 0.20, ABOVE, 0.076, 0.260, 0.071, 0.291, 0.2192, WATCH",
        "12, 40, 0.20, ABOVE, 0.194, 0.427, 0.181, 0.454, 0.9377, LIKELY",
        " 0, 10, 0.20, ABOVE, 0.000, 0.171, 0.000, 0.278, 0.0324, CLEARED"})
    void worked_counts_earn_their_words(
            int x, int n, double at, Side side, double low, double high, double w1, double w2, double p, Verdict word) {
        Rate rate = new Rate(x, n);
        Line line = new Line(at, side, 0);

        assertThat(rate.jeffreys(0.90).low()).isCloseTo(low, within(0.0005));
        assertThat(rate.jeffreys(0.90).high()).isCloseTo(high, within(0.0005));
        assertThat(rate.wilson(0.95).low()).isCloseTo(w1, within(0.0005));
        assertThat(rate.wilson(0.95).high()).isCloseTo(w2, within(0.0005));
        assertThat(line.probability(rate)).isCloseTo(p, within(0.00005));
        assertThat(line.verdict(rate)).isEqualTo(word);
    }

    @Test
    void a_skill_never_seen_is_confirmed_missing_from_eighteen_chances() {
        Line tenth = new Line(0.10, Side.BELOW, 0);

        assertThat(tenth.probability(new Rate(0, 18))).isCloseTo(0.9501, within(0.00005));
        assertThat(tenth.verdict(new Rate(0, 18))).isEqualTo(CONFIRMED);
        assertThat(tenth.verdict(new Rate(0, 17))).isEqualTo(LIKELY);
    }

    @ParameterizedTest
    @CsvSource({"10, 5", "11, 5", "12, 5", "14, 6", "15, 6", "16, 6", "20, 8", "25, 9", "30, 10", "40, 13"})
    void over_a_fifth_is_confirmed_from(int n, int x) {
        assertThat(FIFTH.verdict(new Rate(x, n))).isEqualTo(CONFIRMED);
        assertThat(FIFTH.verdict(new Rate(x - 1, n))).isNotEqualTo(CONFIRMED);
    }

    @ParameterizedTest
    @CsvSource({"6, 2", "8, 3", "10, 4", "11, 4", "12, 4", "14, 5", "15, 5", "16, 5", "20, 6", "30, 8", "40, 11"})
    void over_a_fifth_is_likely_from(int n, int x) {
        assertThat(FIFTH.verdict(new Rate(x, n))).isEqualTo(LIKELY);
        assertThat(FIFTH.verdict(new Rate(x - 1, n))).isEqualTo(WATCH);
    }

    @ParameterizedTest
    @CsvSource({"10, 0", "12, 0", "16, 0", "20, 1", "25, 1", "30, 2", "40, 4"})
    void a_fifth_is_cleared_up_to(int n, int x) {
        assertThat(FIFTH.verdict(new Rate(x, n))).isEqualTo(CLEARED);
        assertThat(FIFTH.verdict(new Rate(x + 1, n))).isNotEqualTo(CLEARED);
    }

    /** How often a player of this true rate gets each word against a line of .20: exact binomial sums. */
    @ParameterizedTest
    @CsvSource({
        "0.05, 12, .000, .002, .457, .540", "0.05, 20, .000, .000, .264, .736", "0.05, 40, .000, .000, .048, .952",
        "0.20, 12, .073, .133, .726, .069", "0.20, 20, .032, .164, .735, .069", "0.20, 40, .043, .118, .763, .076",
        "0.35, 12, .417, .237, .341, .006", "0.35, 20, .399, .356, .243, .002", "0.35, 40, .686, .193, .121, .000",
        "0.45, 12, .696, .170, .134, .001", "0.45, 20, .748, .197, .055, .000", "0.45, 40, .961, .031, .007, .000",
        "0.60, 12, .943, .042, .015, .000", "0.60, 20, .979, .019, .002, .000", "0.60, 40, 1.00, .000, .000, .000"})
    void the_words_are_honest(double truth, int n, double confirmed, double likely, double watch, double cleared) {
        assertThat(chance(truth, n, CONFIRMED)).isCloseTo(confirmed, within(0.00051));
        assertThat(chance(truth, n, LIKELY)).isCloseTo(likely, within(0.00051));
        assertThat(chance(truth, n, WATCH)).isCloseTo(watch, within(0.00051));
        assertThat(chance(truth, n, CLEARED)).isCloseTo(cleared, within(0.00051));
    }
    // spotless:on

    @Nested
    class Games {
        @Test
        void one_game_is_never_enough_to_settle() {
            assertThat(FIFTH.verdict(List.of(new Rate(20, 40)))).isEqualTo(LIKELY);
            assertThat(FIFTH.verdict(List.of(new Rate(0, 40)))).isEqualTo(WATCH);
            assertThat(FIFTH.verdict(List.of(new Rate(20, 40), new Rate(0, 0)))).isEqualTo(LIKELY);
        }

        /** 2/4, 1/4, 5/6, 1/6: without the third game 4 of 14, P .796. */
        @Test
        void a_word_that_one_game_carries_is_taken_back() {
            var games = List.of(new Rate(2, 4), new Rate(1, 4), new Rate(5, 6), new Rate(1, 6));

            assertThat(FIFTH.probability(new Rate(4, 14))).isCloseTo(0.796, within(0.0005));
            assertThat(FIFTH.verdict(games)).isEqualTo(LIKELY);
            assertThat(FIFTH.verdict(List.of(new Rate(3, 6), new Rate(3, 7), new Rate(3, 7))))
                    .isEqualTo(CONFIRMED);
        }

        @Test
        void a_clean_slate_that_one_game_carries_is_taken_back_too() {
            assertThat(FIFTH.verdict(List.of(new Rate(0, 15), new Rate(1, 5)))).isEqualTo(WATCH);
            assertThat(FIFTH.verdict(List.of(new Rate(0, 10), new Rate(1, 10)))).isEqualTo(WATCH);
            assertThat(FIFTH.verdict(List.of(new Rate(0, 10), new Rate(0, 10)))).isEqualTo(CLEARED);
        }

        @Test
        void a_word_once_earned_can_be_lost() {
            var early = List.of(new Rate(4, 6), new Rate(4, 6));
            var late = List.of(new Rate(4, 6), new Rate(4, 6), new Rate(0, 20));

            assertThat(FIFTH.verdict(early)).isEqualTo(CONFIRMED);
            assertThat(FIFTH.verdict(late)).isEqualTo(WATCH);
        }
    }

    @Nested
    class Lines {
        @Test
        void a_higher_minimum_holds_the_word_back_and_a_lower_one_does_not_hurry_it() {
            assertThat(new Line(0.20, Side.ABOVE, 20).verdict(new Rate(9, 19))).isEqualTo(NOT_ENOUGH_TAPE);
            assertThat(new Line(0.20, Side.ABOVE, 20).verdict(new Rate(9, 20))).isEqualTo(CONFIRMED);
            assertThat(new Line(0.20, Side.ABOVE, 2).verdict(new Rate(5, 5))).isEqualTo(NOT_ENOUGH_TAPE);
        }

        @Test
        void a_line_is_a_rate() {
            assertThatThrownBy(() -> new Line(33, Side.ABOVE, 6))
                    .hasMessage("A line is a rate from 0 to 1, but this is 33.0");
        }

        @Test
        void words_are_written_as_slugs() {
            assertThat(Verdict.values())
                    .extracting(Verdict::slug)
                    .containsExactly("not-enough-tape", "watch", "likely", "confirmed", "cleared");
        }
    }

    static LongStream seeds() {
        return LongStream.range(0, 50);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void more_events_never_weaken_the_word_and_mirrored_sides_agree(long seed) {
        Random random = new Random(seed);
        int n = 6 + random.nextInt(80);
        Line line = new Line((1 + random.nextInt(19)) / 20.0, Side.ABOVE, random.nextInt(20));
        Line mirror = new Line(1 - line.value(), Side.BELOW, line.minimum());
        for (int x = 0; x <= n; x++) {
            Verdict word = line.verdict(new Rate(x, n));

            assertThat(mirror.verdict(new Rate(n - x, n))).isEqualTo(word);
            assertThat(strength(word)).isGreaterThanOrEqualTo(strength(line.verdict(new Rate(Math.max(0, x - 1), n))));
        }
    }

    private static int strength(Verdict word) {
        return List.of(CLEARED, NOT_ENOUGH_TAPE, WATCH, LIKELY, CONFIRMED).indexOf(word);
    }

    private static double chance(double truth, int n, Verdict word) {
        var events = BinomialDistribution.of(n, truth);
        return IntStream.rangeClosed(0, n)
                .filter(x -> FIFTH.verdict(new Rate(x, n)) == word)
                .mapToDouble(events::probability)
                .sum();
    }
}
