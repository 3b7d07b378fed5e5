package rushlight.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static rushlight.rules.Reps.classes;
import static rushlight.rules.Reps.rep;
import static rushlight.rules.Reps.rush;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rushlight.film.Reading;

/** First moves, answers and second moves (common practice of the pairings, as the second coach reads them). */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CounterTest {
    private static final Set<String> KINDS =
            Set.of("paired-counter", "likely-counter", "unpaired-second-move", "counter-available", "no-second-action");

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            bull-rush > [anchor-hop] > push-pull,                   paired-counter
            bull-rush > [anchor-hop] > bull-jerk,                   paired-counter
            bull-rush > [anchor-hop] > two-hand-swipe,              unpaired-second-move
            bull-rush > [anchor-hop],                               counter-available no-second-action
            bull-rush > [blocker-anchor] > push-pull,               likely-counter
            bull-rush > [sits-down] > push-pull,                    paired-counter
            speed-rush > [over-set] > up-and-under,                 paired-counter
            speed-rush > [over-set] > inside-move,                  likely-counter
            speed-rush > [over-set] > spin,                         likely-counter
            speed-rush > [over-set] > counter-move,                 likely-counter
            speed-rush > [over-set] > dip-and-rip,                  unpaired-second-move
            speed-rush > [ride-past] > flatten,                     paired-counter
            speed-rush > [pass-set] > up-and-under,                 likely-counter
            speed-rush > up-and-under,                              likely-counter
            speed-rush > [mirror] > long-arm,                       likely-counter
            speed-rush > scissors,                                  ''
            speed-rush > [outside-hand-first] > chop-rip,           paired-counter
            rip > [rip-clamp] > re-rip,                             paired-counter
            inside-rip > [rip-clamp] > re-rip,                      paired-counter
            dip-and-rip > [chip-by-back] > rip-through-chip,        paired-counter
            contain-rush > [under-set] > long-arm,                  likely-counter
            """)
    void a_second_move_is_read_by_the_answer_before_it(String exchange, String kinds) {
        Set<String> expected = kinds.isEmpty() ? Set.of() : Set.of(kinds.split(" "));
        assertThat(kinds(rush(exchange, "result=lost", "second_move_time=yes")))
                .containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void a_compound_that_holds_the_listed_step_is_that_counter() {
        assertThat(kinds(rush("jab-step > [leans-outside] > inside-arm-over", "result=won")))
                .contains("paired-counter");
        assertThat(kinds(rush("long-arm > [blocker-snatch] > pull-over", "result=even")))
                .as("a pull-over ends in an arm-over")
                .containsExactly("paired-counter");
    }

    @Test
    void an_inside_counter_is_not_offered_to_a_man_who_keeps_a_lane() {
        String[] cells = {"result=lost", "second_move_time=yes"};
        assertThat(kinds(rush("cross-chop > [over-set]", cells))).contains("counter-available");
        assertThat(kinds(rush(
                        "cross-chop > [over-set]",
                        "result=lost",
                        "second_move_time=yes",
                        "assignment=pass-contain-assignment")))
                .containsExactly("no-second-action");
    }

    @Test
    void an_exchange_nobody_saw_gives_no_absence() {
        Reading unseen = rush("", "result=lost", "second_move_time=yes", "assignment=free-rush-assignment");
        Reading hidden = rush("bull-rush > [anchor-hop]", "result=lost", "second_move_time=yes", "not_seen=exchange");
        assertThat(kinds(unseen)).isEmpty();
        assertThat(classes(unseen)).doesNotContain("first-move-stopped", "first-move-won", "opp-stopped-primary");
        assertThat(kinds(hidden)).isEmpty();
        assertThat(classes(rush("bull-rush > [anchor-hop]", "result=won", "not_seen=exchange")))
                .doesNotContain("first-move-won");
    }

    @Test
    void a_first_move_is_neither_won_nor_stopped_before_its_end_is_known() {
        assertThat(classes(rush("bull-rush > [anchor-hop]"))).doesNotContain("first-move-won", "first-move-stopped");
        assertThat(classes(rush("bull-rush > [anchor-hop]", "result=even"))).contains("first-move-stopped");
        assertThat(classes(rush("bull-rush > [anchor-hop] > second-effort", "result=won")))
                .as("a finish is no second move")
                .contains("first-move-won");
    }

    @Test
    void runs_have_no_first_move_and_setups_open_nothing() {
        assertThat(classes(rep("play-the-cut", "phase=run", "result=won"))).doesNotContain("first-move-won");
        assertThat(classes(rush("euro-step", "result=lost"))).doesNotContain("first-move-stopped");
        assertThat(classes(rush("hesitation-rush", "result=lost"))).contains("first-move-stopped");
    }

    private static Set<String> kinds(Reading reading) {
        Set<String> classes = new TreeSet<>(classes(reading));
        classes.retainAll(KINDS);
        return classes;
    }
}
