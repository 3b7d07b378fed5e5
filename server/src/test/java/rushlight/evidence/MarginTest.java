package rushlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MarginTest {
    @Nested
    class Two_rates {
        private final Margin fifth = new Margin(0.20, 20);

        @Test
        void each_side_needs_its_minimum() {
            assertThat(fifth.verdict(difference(18, 20, 0, 19))).isEqualTo(Verdict.NOT_ENOUGH_TAPE);
            assertThat(fifth.verdict(difference(18, 20, 0, 20))).isEqualTo(Verdict.CONFIRMED);
        }

        @Test
        void a_gap_at_the_margin_is_watched_and_equal_rates_are_cleared() {
            assertThat(fifth.verdict(difference(12, 30, 6, 30))).isEqualTo(Verdict.WATCH);
            assertThat(fifth.verdict(difference(12, 30, 4, 30))).isEqualTo(Verdict.WATCH);
            assertThat(fifth.verdict(difference(15, 30, 5, 30))).isEqualTo(Verdict.LIKELY);
            assertThat(fifth.verdict(difference(30, 90, 30, 90))).isEqualTo(Verdict.CLEARED);
        }

        @Test
        void one_game_does_not_settle_a_difference() {
            assertThat(fifth.verdict(List.of(difference(18, 20, 0, 20)))).isEqualTo(Verdict.LIKELY);
            assertThat(fifth.verdict(List.of(difference(9, 10, 0, 10), difference(9, 10, 0, 10))))
                    .isEqualTo(Verdict.CONFIRMED);
            assertThat(fifth.verdict(List.of(difference(18, 20, 2, 10), difference(2, 10, 1, 20))))
                    .isEqualTo(Verdict.LIKELY);
        }

        @Test
        void a_margin_is_a_difference_of_rates() {
            assertThatThrownBy(() -> new Margin(-0.1, 6))
                    .hasMessage("A margin is a difference of rates from 0 to 1, but this is -0.1");
        }
    }

    @Nested
    class A_tally {
        private final Tally three = new Tally(3, 20);

        @Test
        void k_events_are_likely_and_from_two_games_confirmed() {
            assertThat(three.verdict(new Rate(3, 4), 1)).isEqualTo(Verdict.LIKELY);
            assertThat(three.verdict(new Rate(3, 20), 2)).isEqualTo(Verdict.CONFIRMED);
            assertThat(new Tally(1, 20).verdict(new Rate(1, 1), 1)).isEqualTo(Verdict.LIKELY);
        }

        @Test
        void fewer_are_watched_and_none_in_the_whole_window_clear_it() {
            assertThat(three.verdict(new Rate(2, 20), 2)).isEqualTo(Verdict.WATCH);
            assertThat(three.verdict(new Rate(0, 20), 0)).isEqualTo(Verdict.CLEARED);
            assertThat(three.verdict(new Rate(0, 19), 0)).isEqualTo(Verdict.NOT_ENOUGH_TAPE);
        }

        @Test
        void a_window_holds_its_events() {
            assertThatThrownBy(() -> new Tally(3, 2))
                    .hasMessage(
                            "A tally wants 1 or more events within at least as many opportunities, but this is 3 within 2");
        }
    }

    private static Difference difference(int x1, int n1, int x2, int n2) {
        return new Difference(new Rate(x1, n1), new Rate(x2, n2));
    }
}
