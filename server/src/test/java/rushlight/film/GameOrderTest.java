package rushlight.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class GameOrderTest {
    @Test
    void reps_go_by_snap_before_all() {
        assertThat(order(
                        rep("late", "snap", "40", "quarter", "1", "clock", "14:00"),
                        rep("early", "snap", "3", "quarter", "4", "clock", "1:00")))
                .containsExactly("early", "late");
    }

    @Test
    void else_by_quarter_and_the_clock_that_runs_down() {
        assertThat(order(
                        rep("c", "quarter", "2", "clock", "15:00"),
                        rep("b", "quarter", "1", "clock", "9:05"),
                        rep("a", "quarter", "1", "clock", "14:00")))
                .containsExactly("a", "b", "c");
    }

    @Test
    void else_by_where_they_start_on_their_film() {
        assertThat(order(
                        rep("b", "video", "first", "start", "1:10"),
                        rep("c", "video", "second", "start", "0:05"),
                        rep("a", "video", "first", "start", "0:50")))
                .containsExactly("a", "b", "c");
    }

    @Test
    void else_as_they_came() {
        assertThat(order(rep("z"), rep("a"), rep("m"))).containsExactly("z", "a", "m");
    }

    @Test
    void a_rep_without_a_number_stays_behind_the_one_it_followed() {
        assertThat(order(rep("c", "snap", "30"), rep("follows c"), rep("a", "snap", "10"), rep("b", "snap", "20")))
                .containsExactly("a", "b", "c", "follows c");
    }

    @Test
    void a_number_that_few_have_decides_nothing() {
        assertThat(order(rep("z"), rep("y", "snap", "1"), rep("x"))).containsExactly("z", "y", "x");
    }

    private static List<String> order(Reading... readings) {
        return GameOrder.of(List.of(readings)).stream()
                .map(reading -> reading.rep().rep())
                .toList();
    }

    private static Reading rep(String name, String... tags) {
        Map<String, List<String>> values = new HashMap<>();
        for (int i = 0; i < tags.length; i += 2) {
            values.put(tags[i], List.of(tags[i + 1]));
        }
        return new Reading(new RepId("p", "g", name), "e", values, List.of());
    }
}
