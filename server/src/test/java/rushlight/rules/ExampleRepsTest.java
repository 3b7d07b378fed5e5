package rushlight.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static rushlight.rules.Reps.classes;
import static rushlight.rules.Reps.run;
import static rushlight.rules.Reps.rush;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ExampleRepsTest {
    @Test
    void a_stopped_bull_with_time_and_nothing_after_it() {
        assertThat(classes(rush(
                        "bull-rush > [anchor-hop]",
                        "blocker=right-tackle",
                        "assignment=free-rush-assignment",
                        "second_move_time=yes",
                        "result=lost")))
                .containsExactlyInAnyOrder(
                        "counter-available",
                        "ended-through",
                        "first-move-stopped",
                        "no-second-action",
                        "opp-one-on-one",
                        "opp-snap",
                        "opp-stopped-primary",
                        "opp-weight-forward");
    }

    @Test
    void a_bull_that_hops_and_is_pulled_off_is_a_paired_counter() {
        assertThat(classes(rush(
                        "bull-rush > [anchor-hop] > push-pull",
                        "blocker=right-tackle",
                        "assignment=free-rush-assignment",
                        "second_move_time=yes",
                        "how_won=counter",
                        "result=won")))
                .contains("paired-counter", "first-move-stopped", "opp-stopped-primary")
                .doesNotContain(
                        "likely-counter",
                        "unpaired-second-move",
                        "no-second-action",
                        "counter-available",
                        "first-move-won");
    }

    @Test
    void a_kick_out_taken_under_the_block_by_a_spill_man() {
        assertThat(classes(run(
                        "squeeze-down > [kick-out-block] > wrong-arm > ricochet",
                        "assignment=spill-assignment",
                        "direction=run-at-him",
                        "movement=no",
                        "results=ball-bounced;tackle-made",
                        "result=won")))
                .containsExactlyInAnyOrder(
                        "fit-right",
                        "inside-his",
                        "opp-kick-out",
                        "opp-kick-out-spill",
                        "opp-playside-run",
                        "opp-run",
                        "opp-single-block-run",
                        "opp-snap");
    }

    @Test
    void the_same_wrong_arm_by_a_contain_man_loses_his_edge() {
        assertThat(classes(run(
                        "[pull-and-kick-block] > wrong-arm",
                        "assignment=contain-force-assignment",
                        "direction=run-at-him",
                        "results=edge-lost-outside;long-gain",
                        "faults=outside-arm-pinned")))
                .contains("fit-wrong", "edge-lost-by-duty", "opp-kick-out-contain-force", "outside-his")
                .doesNotContain("fit-right");
    }

    @Test
    void the_same_wrong_arm_with_the_duty_unknown_is_neither() {
        assertThat(classes(run(
                        "[pull-and-kick-block] > wrong-arm",
                        "direction=run-at-him",
                        "results=edge-lost-outside;ball-bounced")))
                .contains("fit-depends", "opp-kick-out-unknown", "his-side-unknown")
                .doesNotContain("fit-right", "fit-wrong", "edge-lost-by-duty");
    }
}
