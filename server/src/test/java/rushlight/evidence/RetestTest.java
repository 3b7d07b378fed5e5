package rushlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Expected values are those of the planning note on player development (retest targets, decisions, the invented player T, G, P,
 * I), found there by another program; the line is the note's standard less 15 points.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RetestTest {
    private static final int[] LENGTHS = {8, 10, 12, 15, 20, 30};

    // spotless:off
    @ParameterizedTest
    @CsvSource({
        " 3, 14, 0.60, 5 6 6 8 9 13,     .0495 .0450 .0929 .0537 .0994 .0932, .59 .63 .84 .79 .94 .98",
        " 2, 13, 0.45, 4 5 6 7 8 11,     .0769 .0589 .0474 .0523 .0827 .0934, .52 .50 .47 .55 .75 .86",
        " 9, 16, 0.80, 8 9 11 13 16 23,  .0242 .0609 .0344 .0496 .0872 .0971, .17 .38 .27 .40 .63 .76",
        "31, 60, 0.75, 7 8 10 11 15 21,  .0530 .0826 .0365 .0996 .0498 .0650, .37 .53 .39 .69 .62 .80",
        " 8, 20, 0.65, 6 7 9 10 13 19,   .0840 .0980 .0445 .0856 .0769 .0661, .43 .51 .35 .56 .60 .65",
        " 5, 10, 0.60, 7 9 10 12 16 23,  .0837 .0457 .0751 .0845 .0650 .0723, .11 .05 .08 .09 .05 .04",
        "15, 30, 0.70, 7 8 10 12 15 21,  .0529 .0819 .0388 .0412 .0553 .0740, .26 .38 .25 .30 .42 .59"})
    void the_target_and_its_chances(int x, int n, double standard, String targets, String luck, String shown) {
        Retest retest = of(x, n, standard);

        for (int i = 0; i < LENGTHS.length; i++) {
            int target = retest.improving(LENGTHS[i]).orElseThrow();
            assertThat(target).isEqualTo(Integer.parseInt(targets.split(" ", -1)[i]));
            assertThat(retest.luck(target, LENGTHS[i])).isCloseTo(value(luck, i), within(0.00006));
            assertThat(retest.shown(target, LENGTHS[i])).isCloseTo(value(shown, i), within(0.0051));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.45, 6 7 8 10 14 21", "0.50, 7 7 9 11 15 23", "0.60, 8 9 10 13 18 27", "0.70, 9 10 12 15 21 32",
        "0.75, 9 10 13 16 23 34", "0.80, 9 11 13 17 24 36"})
    void the_fewest_that_clear(double standard, String expected) {
        int[] lengths = {10, 12, 15, 20, 30, 45};
        Retest retest = of(1, 20, standard);

        assertThat(IntStream.of(lengths).map(n -> retest.clearing(n).orElseThrow()).toArray())
                .isEqualTo(IntStream.range(0, 6).map(i -> (int) value(expected, i)).toArray());
        assertThat(retest.clearing(9)).isEmpty();
    }

    /** The chance to be cleared for a player who is truly at the line, at the standard, ten points over it. */
    @ParameterizedTest
    @CsvSource({
        "0.45, 20, .05 .41 .75", "0.50, 12, .08 .39 .67", "0.60, 30, .07 .58 .92", "0.70, 15, .04 .30 .65",
        "0.75, 45, .02 .55 .97", "0.80, 10, .09 .38 .74"})
    void how_honest_clearing_is(double standard, int n, String chances) {
        int least = of(1, 20, standard).clearing(n).orElseThrow();
        double[] truths = {standard - 0.15, standard, standard + 0.10};

        for (int i = 0; i < truths.length; i++) {
            assertThat(BinomialDistribution.of(n, truths[i]).survivalProbability(least - 1))
                    .isCloseTo(value(chances, i), within(0.0051));
        }
    }

    @ParameterizedTest
    @CsvSource({
        // gap, standard, fresh, target, clears from, slips at or below (-1: at nothing), P(rate < line), P(better), opportunities that are enough
        " 9, 16, 0.80, 11, 12, 11, 11,  3, 0.0176, 0.984, CLEARED,         48",
        "31, 60, 0.75, 37, 45, 30, 34, 17, 0.0007, 1.000, CLEARED,         29",
        " 3, 14, 0.60,  6, 10,  6,  8, -1, 0.1703, 0.973, IMPROVING,       16",
        " 2, 13, 0.45,  4, 10,  5,  6, -1, 0.2381, 0.908, NO_EVIDENCE_YET, 29"})
    void the_invented_player_after_three_games(
            int x, int n, double standard, int good, int fresh, int target, int clears, int slips, double under,
            double better, Change change, int enough) {
        Retest retest = of(x, n, standard);

        assertThat(retest.improving(fresh)).hasValue(target);
        assertThat(retest.clearing(fresh)).hasValue(clears);
        assertThat(IntStream.rangeClosed(0, fresh).filter(k -> retest.slips(new Rate(k, fresh))).max().orElse(-1))
                .isEqualTo(slips);
        assertThat(new Rate(good, fresh).probability(Side.BELOW, standard - 0.15)).isCloseTo(under, within(0.00006));
        assertThat(retest.better(new Rate(good, fresh))).isCloseTo(better, within(0.0006));
        assertThat(retest.change(thirds(good, fresh))).isEqualTo(change);
        assertThat(retest.enough()).hasValue(enough);
    }
    // spotless:on

    @Test
    void where_he_is_already_near_what_is_wanted_no_number_is_enough() {
        assertThat(of(5, 10, 0.60).enough()).isEmpty();
    }

    @Test
    void a_gap_over_its_line_is_counted_in_what_did_not_happen() {
        Retest lost = new Retest(new Line(0.40, Side.ABOVE, 0), new Rate(11, 14));

        assertThat(lost.aim()).isEqualTo(0.75);
        assertThat(lost.improving(12)).isEqualTo(of(3, 14, 0.75).improving(12));
        assertThat(lost.events(9, 12)).isEqualTo(3);
        assertThat(lost.change(List.of(new Rate(1, 6), new Rate(1, 6)))).isEqualTo(Change.CLEARED);
        assertThat(lost.change(List.of(new Rate(5, 6), new Rate(5, 6)))).isEqualTo(Change.NO_EVIDENCE_YET);
        assertThat(new Retest(lost.line(), new Rate(4, 14)).change(List.of(new Rate(6, 6), new Rate(6, 6))))
                .isEqualTo(Change.SLIPPING);
    }

    @Test
    void one_game_clears_nothing_and_five_chances_say_nothing() {
        Retest retest = of(3, 14, 0.60);

        assertThat(retest.change(List.of(new Rate(9, 10)))).isEqualTo(Change.IMPROVING);
        assertThat(retest.change(List.of(new Rate(3, 3), new Rate(2, 2)))).isEqualTo(Change.NOT_ENOUGH_TAPE);
    }

    @Test
    void the_aim_is_never_more_than_half_the_way_to_the_end_of_the_scale() {
        assertThat(new Retest(new Line(0.10, Side.ABOVE, 0), new Rate(5, 10)).aim())
                .isCloseTo(0.95, within(1e-12));
    }

    /** An unchanged player reaches his target in one of ten cases at most, whatever his true rate is on the average. */
    @Test
    void luck_is_what_it_says_in_a_simulation() {
        Random random = new Random(17);
        int reached = 0;
        int runs = 40_000;
        for (int run = 0; run < runs; run++) {
            double rate = beta(random);
            int before = binomial(random, 15, rate);
            int fresh = binomial(random, 12, rate);
            OptionalInt target = of(before, 15, 0.60).improving(12);
            reached += target.isPresent() && fresh >= target.getAsInt() ? 1 : 0;
        }

        assertThat((double) reached / runs).isBetween(0.02, 0.10);
    }

    @Test
    void the_chances_of_what_is_to_come_add_up() {
        Predictive next = new Predictive(new Rate(3, 14), 12);
        double sum = IntStream.rangeClosed(0, 12).mapToDouble(next::exactly).sum();

        assertThat(sum).isCloseTo(1, within(1e-12));
        for (int k = 0; k < 12; k++) {
            assertThat(next.atMost(k) + next.atLeast(k + 1)).isCloseTo(1, within(1e-12));
        }
    }

    /** A draw of the arcsine distribution, Beta(1/2, 1/2), which is the prior. */
    private static double beta(Random random) {
        double sin = Math.sin(Math.PI / 2 * random.nextDouble());
        return sin * sin;
    }

    private static int binomial(Random random, int n, double rate) {
        return (int) random.doubles(n).filter(u -> u < rate).count();
    }

    private static Retest of(int x, int n, double standard) {
        return new Retest(new Line(standard - 0.15, Side.BELOW, 0), new Rate(x, n));
    }

    private static List<Rate> thirds(int good, int all) {
        List<Rate> games = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            games.add(new Rate(good * (i + 1) / 3 - good * i / 3, all * (i + 1) / 3 - all * i / 3));
        }
        return games;
    }

    private static double value(String list, int place) {
        return Double.parseDouble(list.split(" ", -1)[place]);
    }
}
