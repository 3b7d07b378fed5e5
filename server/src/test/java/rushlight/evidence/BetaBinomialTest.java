package rushlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Where each expected value comes from stands beside it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class BetaBinomialTest {
    /** Tumors of rats in 71 groups, the last one current (Tarone 1982, the example of Bayesian Data Analysis, chapter 5). */
    private static final List<Rate> RATS = counts(
            "0x14 1x8 2x9 1 5 2 5 3 2 7 7 3 3 2 9 10 4x7 10 4 4 4 5 11 12 5 5 6 5 6 6 6 6 16 15 15 9 4",
            "20x7 19x4 18x2 17 20x4 19x2 18x2 25 24 23 20x6 10 49 19 46 27 17 49 47 20 20 13 48 50 20x7 48 19x3 22 46 49"
                    + " 20 20 23 19 22 20x3 52 46 47 24 14");

    /** An invented group of peers. */
    private static final List<Rate> PEERS =
            counts("0 1 5 0 2 6 0 1 4 1 2 7 1 0 3 2 0 5 2 1", "11 9 14 8 12 13 10 9 15 8 11 14 9 10 12 13 8 10 11 9");

    /** An invented group that differs less than chance would make it. */
    private static final List<Rate> ALIKE =
            counts("2 1 3 0 2 4 1 2 3 1 2 5 1 0 2 3 1 2 2 1", "11 9 14 8 12 13 10 9 15 8 11 14 9 10 12 13 8 10 11 9");

    @Test
    void the_rats_are_the_published_ones() {
        assertThat(RATS).hasSize(71);
        assertThat(RATS.stream().mapToInt(Rate::events).sum())
                .isEqualTo(267); // memory: the sums of the published table
        assertThat(RATS.stream().mapToInt(Rate::opportunities).sum()).isEqualTo(1739);
    }

    @Test
    void a_current_group_is_drawn_to_the_rate_of_the_historical_ones() {
        // From memory: Bayesian Data Analysis 5.1 has 0.223 and 0.083 for 4 of 14 under the raw moments 1.356149,
        // 8.615058.
        BetaBinomial raw = new BetaBinomial(1.356149, 8.615058);
        assertThat(raw.shrink(new Rate(4, 14)).mean()).isCloseTo(0.223441, within(5e-7));
    }

    @Test
    void moments_leave_the_noise_of_counting_out() {
        // Computed in R by the formula of Kleinman: 3.346475 and 18.44948; m 0.1535365, rho 0.04386743.
        BetaBinomial rats = BetaBinomial.moments(RATS).orElseThrow();
        assertThat(rats.a()).isCloseTo(3.346475, within(5e-7));
        assertThat(rats.b()).isCloseTo(18.44948, within(5e-6));
        assertThat(rats.mean()).isCloseTo(0.1535365, within(5e-8));
        assertThat(1 / (rats.a() + rats.b() + 1)).isCloseTo(0.04386743, within(5e-9));
        // Computed in R: m 0.1990741, rho 0.0918132.
        BetaBinomial peers = BetaBinomial.moments(PEERS).orElseThrow();
        assertThat(peers.a()).isCloseTo(1.969177, within(5e-7));
        assertThat(peers.b()).isCloseTo(7.922503, within(5e-7));
    }

    @Test
    void the_likeliest_spread_is_that_of_two_other_programs() {
        // Computed in R two ways (optim 2.341609, 14.11477; VGAM betabinomialff 2.34151, 14.11428).
        BetaBinomial all = BetaBinomial.likeliest(RATS).orElseThrow();
        assertThat(all.a()).isCloseTo(2.3416, within(5e-4));
        assertThat(all.b()).isCloseTo(14.1148, within(5e-3));
        assertThat(all.logLikelihood(RATS)).isCloseTo(-156.5689, within(5e-5));
        List<Rate> historical = RATS.subList(0, 70);
        BetaBinomial before = BetaBinomial.likeliest(historical).orElseThrow();
        assertThat(before.a()).isCloseTo(2.3048, within(5e-4));
        assertThat(before.b()).isCloseTo(14.0798, within(5e-3));
        assertThat(before.logLikelihood(historical)).isCloseTo(-154.1402, within(5e-5));
    }

    @Test
    void boys_among_the_first_twelve_children_of_Saxony() {
        // Geissler 1889. The optimum by Newton in R, gradient under 1e-11: 34.102858, 31.578234, and -12492.87. The
        // printed
        // 34.09558 and 31.5715 are not the optimum.
        int[] families = {3, 24, 104, 286, 670, 1033, 1343, 1112, 829, 478, 181, 45, 7};
        List<Rate> saxony = new ArrayList<>();
        IntStream.rangeClosed(0, 12)
                .forEach(boys -> saxony.addAll(Collections.nCopies(families[boys], new Rate(boys, 12))));
        BetaBinomial found = BetaBinomial.likeliest(saxony).orElseThrow();
        assertThat(found.a()).isCloseTo(34.102858, within(5e-5));
        assertThat(found.b()).isCloseTo(31.578234, within(5e-5));
        assertThat(found.logLikelihood(saxony)).isCloseTo(-12492.87, within(5e-3));
    }

    @Test
    void three_of_seven_is_quoted_as_29_percent_beside_his_peers() {
        // Computed in R: by moments 0.294179, 90 % 0.1317 to 0.4851; likeliest 1.934029, 8.325479, -36.24878,
        // 0.2858731.
        BetaBinomial.Shrunken moments =
                BetaBinomial.moments(PEERS).orElseThrow().shrink(new Rate(3, 7));
        assertThat(moments.mean()).isCloseTo(0.294179, within(5e-7));
        assertThat(moments.likely().low()).isCloseTo(0.1317, within(5e-5));
        assertThat(moments.likely().high()).isCloseTo(0.4851, within(5e-5));
        BetaBinomial likeliest = BetaBinomial.of(PEERS).orElseThrow();
        assertThat(likeliest.a()).isCloseTo(1.934029, within(5e-5));
        assertThat(likeliest.b()).isCloseTo(8.325479, within(5e-4));
        assertThat(likeliest.logLikelihood(PEERS)).isCloseTo(-36.24878, within(5e-6));
        assertThat(likeliest.shrink(new Rate(3, 7)).mean()).isCloseTo(0.2858731, within(5e-6));
    }

    @Test
    void peers_who_differ_less_than_chance_are_one_rate_and_weigh_fifty_chances() {
        assertThat(BetaBinomial.moments(ALIKE)).isEmpty(); // computed in R: rho is -0.0447
        BetaBinomial pooled = BetaBinomial.of(ALIKE).orElseThrow();
        assertThat(pooled.a() + pooled.b()).isCloseTo(50, within(1e-9));
        assertThat(pooled.mean()).isCloseTo((38 + 0.5) / (216 + 1), within(1e-12));
        // (50 x 0.17742 + 3) / 57
        assertThat(pooled.shrink(new Rate(3, 7)).mean()).isCloseTo(0.208263, within(1e-5));
    }

    @Test
    void where_everybody_always_or_never_does_it_the_group_is_one_rate_short_of_the_end() {
        for (int events : new int[] {0, 10}) {
            BetaBinomial group = BetaBinomial.of(Collections.nCopies(12, new Rate(events, 10)))
                    .orElseThrow();
            assertThat(group.mean()).isBetween(0.004, 0.996);
            assertThat(group.shrink(new Rate(2, 4)).likely().low()).isPositive();
        }
        assertThat(BetaBinomial.of(Collections.nCopies(12, new Rate(4, 10)))
                        .orElseThrow()
                        .mean())
                .isCloseTo(48.5 / 121, within(1e-12));
    }

    @Test
    void one_peer_or_nine_are_no_group_and_a_peer_of_seven_chances_is_none() {
        assertThat(BetaBinomial.of(List.of(new Rate(30, 60)))).isEmpty();
        assertThat(BetaBinomial.of(PEERS.subList(0, 9))).isEmpty();
        List<Rate> thin = new ArrayList<>(PEERS.subList(0, 9));
        thin.add(new Rate(3, 7));
        assertThat(BetaBinomial.of(thin)).isEmpty();
        thin.set(9, new Rate(3, 8));
        assertThat(BetaBinomial.of(thin)).isPresent();
        assertThat(BetaBinomial.moments(List.of())).isEmpty();
        assertThat(BetaBinomial.moments(List.of(new Rate(0, 0), new Rate(3, 9))))
                .isEmpty();
    }

    @Test
    void without_a_chance_of_his_own_he_is_what_the_group_is_and_with_many_he_is_himself() {
        BetaBinomial group = BetaBinomial.of(PEERS).orElseThrow();
        assertThat(group.shrink(new Rate(0, 0)).mean()).isCloseTo(group.mean(), within(1e-12));
        assertThat(group.shrink(new Rate(600, 1000)).mean()).isBetween(0.59, 0.60);
    }

    @Test
    void more_chances_are_drawn_less_and_never_past_his_own_rate() {
        BetaBinomial group = BetaBinomial.of(PEERS).orElseThrow();
        double before = group.mean();
        for (int n = 5; n < 200; n += 5) {
            double now = group.shrink(new Rate(3 * n / 5, n)).mean();
            assertThat(now).isGreaterThan(before).isLessThan(0.6);
            before = now;
        }
    }

    @Test
    void a_group_that_hardly_differs_never_outweighs_fifty_chances() {
        BetaBinomial heavy = new BetaBinomial(300, 700).capped();
        assertThat(heavy.a()).isCloseTo(15, within(1e-9));
        assertThat(heavy.b()).isCloseTo(35, within(1e-9));
        assertThatThrownBy(() -> new BetaBinomial(0, 3)).hasMessageContaining("two numbers over 0");
    }

    private static List<Rate> counts(String events, String opportunities) {
        int[] x = numbers(events);
        int[] n = numbers(opportunities);
        assertThat(x).hasSameSizeAs(n);
        return IntStream.range(0, x.length).mapToObj(i -> new Rate(x[i], n[i])).toList();
    }

    /** {@code 4x7} is seven times 4. */
    private static int[] numbers(String written) {
        return Arrays.stream(written.split(" ", -1))
                .flatMapToInt(part -> {
                    String[] times = part.split("x", -1);
                    return IntStream.generate(() -> Integer.parseInt(times[0]))
                            .limit(times.length == 1 ? 1 : Integer.parseInt(times[1]));
                })
                .toArray();
    }
}
