package rushlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Published values say where they stand; the others were computed in R by another route. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TrendTest {
    /** Graubard and Korn 1987, maternal drinking and malformation; events, and opportunities without one. */
    private static final List<Rate> DRINKING = rates(48, 17114, 38, 14502, 5, 793, 1, 127, 1, 38);

    private static final List<Rate> FIVE_GAMES = rates(0, 4, 1, 5, 2, 6, 2, 4, 4, 6);

    /** Agresti, Categorical Data Analysis: 6.57, p .010, scores 0 .5 1.5 4 7; doubled here, which changes nothing. */
    @Test
    void the_textbook_example() {
        Trend trend = new Trend(DRINKING, List.of(0, 1, 3, 8, 14));

        assertThat(trend.z() * trend.z()).isCloseTo(6.570134, within(5e-7));
        assertThat(trend.asymptoticP()).isCloseTo(0.01037041, within(5e-9));
        assertThat(trend.exactP(Side.ABOVE, false)).isCloseTo(0.01678295, within(5e-9)); // Agresti: .0168
        assertThat(trend.exactP(Side.ABOVE, true)).isCloseTo(0.01532789, within(5e-9));
    }

    /** A statistics program's worked example of the same data with a last score of 8: p .0078, exact one-sided .0158. */
    @Test
    void the_same_with_another_last_score() {
        Trend trend = new Trend(DRINKING, List.of(0, 1, 3, 8, 16));

        assertThat(trend.asymptoticP()).isCloseTo(0.007800183, within(5e-9));
        assertThat(trend.exactP(Side.ABOVE, false)).isCloseTo(0.0157687, within(5e-8));
    }

    /** Fleiss 1981, four groups of patients (data in the R documentation of prop.trend.test): 8.2249, p .004132. */
    @Test
    void four_groups_of_patients() {
        Trend trend = Trend.of(rates(83, 86, 90, 93, 129, 136, 70, 82));

        assertThat(trend.z() * trend.z()).isCloseTo(8.224922, within(5e-7));
        assertThat(trend.z()).isNegative();
        assertThat(trend.p()).isCloseTo(0.004131897, within(5e-9));
    }

    /** Fagerland, Lydersen and Laake 2017, chapter 5: exact two-sided .62494, mid-p .57705; five rows z -1.788, p .07381. */
    @Test
    void troponin() {
        Trend four = Trend.of(rates(8, 61, 10, 58, 11, 111, 22, 124));
        assertThat(four.exactP(false)).isCloseTo(0.62494, within(5e-6));
        assertThat(four.exactP(true)).isCloseTo(0.57705, within(5e-6));

        Trend five = Trend.of(rates(8, 61, 10, 58, 11, 111, 22, 124, 6, 135));
        assertThat(five.z()).isCloseTo(-1.787808, within(5e-7));
        assertThat(five.asymptoticP()).isCloseTo(0.07380702, within(5e-9));
    }

    @Test
    void five_games() {
        Trend trend = Trend.of(FIVE_GAMES);

        assertThat(trend.z() * trend.z()).isCloseTo(5.5972, within(5e-5));
        assertThat(trend.asymptoticP()).isCloseTo(0.01799, within(5e-6));
        assertThat(trend.exactP(false)).isCloseTo(0.02697, within(5e-6));
        assertThat(trend.exactP(true)).isCloseTo(0.01902, within(5e-6));
        assertThat(trend.exactP(Side.ABOVE, false)).isCloseTo(0.01349, within(5e-6));
        assertThat(trend.p()).isEqualTo(trend.exactP(true));
    }

    @Test
    void a_game_without_a_chance_changes_nothing_but_the_order() {
        List<Rate> with =
                Stream.concat(FIVE_GAMES.stream(), Stream.of(new Rate(0, 0))).toList();

        assertThat(Trend.of(with).p()).isCloseTo(Trend.of(FIVE_GAMES).p(), within(1e-12));
    }

    @Test
    void three_games_or_nothing_but_events_are_not_asked() {
        assertThat(Trend.of(rates(0, 4, 1, 5, 2, 6, 0, 0)).canBeAsked()).isFalse();
        assertThat(Trend.of(rates(4, 4, 5, 5, 6, 6, 4, 4)).canBeAsked()).isFalse();
        assertThat(Trend.of(FIVE_GAMES).canBeAsked()).isTrue();
    }

    /** The exact tails against dealing the events out by chance. */
    @Test
    void the_exact_tail_agrees_with_shuffled_games() {
        Random random = new Random(23);
        int runs = 40_000;
        int asHigh = 0;
        for (int run = 0; run < runs; run++) {
            asHigh += shuffled(random) >= 27 ? 1 : 0;
        }

        assertThat((double) asHigh / runs).isCloseTo(Trend.of(FIVE_GAMES).exactP(Side.ABOVE, false), within(0.003));
    }

    /** Benjamini and Hochberg 1995, section 3.2: at .05 the four smallest of 15 stand, where Bonferroni leaves three. */
    @Test
    void many_findings_at_once() {
        List<Double> ps = List.of(
                .0001, .0004, .0019, .0095, .0201, .0278, .0298, .0344, .0459, .3240, .4262, .5719, .6528, .7590, 1.0);
        List<Double> adjusted = BenjaminiHochberg.adjusted(ps);
        double[] r = {
            .0015, .0030, .0095, .035625, .0603, .063857, .063857, .0645, .0765, .4860, .581182, .714875, .753231,
            .813214, 1
        };

        IntStream.range(0, r.length).forEach(i -> assertThat(adjusted.get(i)).isCloseTo(r[i], within(5e-7)));
        assertThat(adjusted.stream().filter(p -> p <= 0.05)).hasSize(4);
        assertThat(ps.stream().filter(p -> p * ps.size() <= 0.05)).hasSize(3);
    }

    @Test
    void the_order_of_the_tests_does_not_matter() {
        assertThat(BenjaminiHochberg.adjusted(List.of(0.9, 0.01, 0.03))).containsExactly(0.9, 0.03, 0.045);
        assertThat(BenjaminiHochberg.adjusted(List.of())).isEmpty();
    }

    /** One deal of 9 events over 25 opportunities in games of 4, 5, 6, 4 and 6: the sum of the games' places. */
    private static int shuffled(Random random) {
        int sum = 0;
        int left = 25;
        int events = 9;
        int[] sizes = {4, 5, 6, 4, 6};
        for (int game = 0; game < sizes.length; game++) {
            for (int i = 0; i < sizes[game]; i++) {
                if (random.nextInt(left) < events) {
                    events--;
                    sum += game;
                }
                left--;
            }
        }
        return sum;
    }

    private static List<Rate> rates(int... eventsAndOpportunities) {
        return IntStream.range(0, eventsAndOpportunities.length / 2)
                .mapToObj(i -> new Rate(eventsAndOpportunities[2 * i], eventsAndOpportunities[2 * i + 1]))
                .toList();
    }
}
