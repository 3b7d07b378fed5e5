package rushlight.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static rushlight.rules.Reps.CHARTED;
import static rushlight.rules.Reps.RULES;
import static rushlight.rules.Reps.rep;
import static rushlight.rules.Reps.run;
import static rushlight.rules.Reps.rush;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.film.Reading;

/**
 * What cannot be judged without the duty: the seventeen cases of the trade (common practice), each under every duty it
 * names and with the duty unknown. Where a case and the book's fit rules differ, the fit rules were reviewed later and win;
 * the test says so.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FitVerdictTest {
    private static final Set<String> VERDICTS = Set.of(
            "fit-right",
            "fit-right-not-carried-out",
            "fit-wrong",
            "fit-unlisted",
            "fit-depends",
            "edge-kept-by-duty",
            "edge-lost-by-duty");

    @Test
    void amb_01_the_ball_got_outside_after_a_puller() {
        String[] rep = {"[pull-and-kick-block] > wrong-arm", "results=edge-lost-outside;ball-bounced"};
        assertThat(under("contain-force-assignment", rep)).containsExactly("edge-lost-by-duty", "fit-wrong");
        assertThat(under("box-assignment", rep)).containsExactly("edge-lost-by-duty", "fit-wrong");
        assertThat(under("spill-assignment", rep)).containsExactly("fit-right");
        assertThat(under("", rep)).containsExactly("fit-depends");
    }

    @Test
    void amb_02_the_ball_hit_inside_him() {
        String[] boxed = {"[kick-out-block] > box-and-squeeze", "results=inside-lane-open"};
        String[] wide = {"[kick-out-block] > box-and-squeeze", "results=inside-lane-open", "faults=no-squeeze"};
        assertThat(under("spill-assignment", boxed)).containsExactly("fit-wrong");
        assertThat(under("box-assignment", wide)).containsExactly("fit-right", "fit-right-not-carried-out");
        assertThat(under("box-assignment", boxed)).containsExactly("fit-right");
        assertThat(under("contain-force-assignment", boxed)).containsExactly("fit-right");
        assertThat(under("", boxed)).containsExactly("fit-depends");
    }

    @Test
    void amb_03_he_crossed_inside_and_the_ball_bounced() {
        String[] crossed = {"[reach-block] > cross-face-run", "faults=backdoors-block", "results=ball-bounced"};
        assertThat(under("box-assignment", and(crossed, "movement=no"))).containsExactly("fit-wrong");
        assertThat(under("contain-force-assignment", and(crossed, "movement=no")))
                .containsExactly("fit-wrong");
        assertThat(under("box-assignment", and(crossed, "movement=yes"))).isEmpty();
        for (String call : List.of("pinch", "spike", "long-stick")) {
            assertThat(under("box-assignment", "[reach-block] > " + call, "faults=backdoors-block"))
                    .as(call)
                    .isEmpty();
        }
    }

    @Test
    void amb_04_he_did_not_chase_a_run_away() {
        String[] stayed = {"[tackle-away] > boot-counter-reverse-check", "direction=run-away", "faults=misses-cutback"};
        assertThat(under("chase-assignment", stayed)).containsExactly("fit-wrong");
        assertThat(under("bcr-assignment", stayed)).containsExactly("fit-right");
        assertThat(under("", stayed)).containsExactly("fit-depends");
    }

    @Test
    void amb_05_he_chased_and_it_came_back_behind_him() {
        String[] cutOff = {"[cutoff-block] > flat-chase", "direction=run-away", "faults=loses-backside"};
        assertThat(under("bcr-assignment", cutOff)).containsExactly("fit-wrong");
        assertThat(under("chase-assignment", cutOff)).containsExactly("fit-right");
        assertThat(under("", cutOff)).containsExactly("fit-depends");

        // With nobody on him the book leaves flat or trail to the team: the chase is no wrong answer, the loss is
        // tagged.
        String[] free = {"[tackle-away] > flat-chase", "direction=run-away", "faults=loses-backside"};
        assertThat(under("bcr-assignment", free)).containsExactly("fit-right", "fit-right-not-carried-out");
        assertThat(under("chase-assignment", free)).containsExactly("fit-right");
    }

    @Test
    void amb_06_he_took_the_give_and_the_quarterback_kept_it() {
        String[] rep = {
            "[unblocked-read-key] > crash-the-mesh", "faults=bites-on-dive", "direction=quarterback-keep-at-him"
        };
        assertThat(under("read-quarterback-assignment", rep)).containsExactly("fit-wrong");
        assertThat(under("read-dive-assignment", rep)).containsExactly("fit-right");
        assertThat(under("", rep)).containsExactly("fit-depends");
    }

    @Test
    void amb_07_he_sat_and_the_back_ran_inside_him() {
        String[] rep = {"[unblocked-read-key] > surf", "faults=hesitant", "results=inside-lane-open"};
        assertThat(under("read-dive-assignment", rep)).containsExactly("fit-wrong");
        assertThat(under("read-quarterback-assignment", rep)).containsExactly("fit-right");
        assertThat(under("", rep)).containsExactly("fit-depends");
    }

    @Test
    void amb_08_he_was_sealed_inside_by_a_pin() {
        String[] rep = {"[pin-block] > stack", "faults=washed-inside", "results=edge-sealed"};
        assertThat(under("spill-assignment", and(rep, "gap=outside"))).containsExactly("fit-wrong");
        assertThat(under("contain-force-assignment", rep)).containsExactly("fit-wrong");
        assertThat(under("spill-assignment", and(rep, "gap=inside"))).containsExactly("fit-right");
        assertThat(under("", and(rep, "gap=inside"))).containsExactly("fit-depends");
        assertThat(under("spill-assignment", rep)).as("nobody tagged his gap").isEmpty();
    }

    @Test
    void amb_09_he_crossed_under_a_crack() {
        String[] rep = {"[crack-block] > rip-through", "faults=backdoors-block"};
        // Whether the corner replaced him is in no column, so the two rows of a force player never speak.
        assertThat(under("contain-force-assignment", rep)).isEmpty();
        assertThat(under("box-assignment", rep)).containsExactly("fit-wrong");
        assertThat(under("spill-assignment", rep)).containsExactly("fit-right");
        assertThat(under("", rep)).containsExactly("fit-depends");
    }

    @Test
    void amb_10_he_left_the_rush_for_the_back() {
        Reading rep = rush("speed-rush > peel", "result=even");
        assertThat(verdicts(rep)).isEmpty();
        assertThat(verdicts(rush("speed-rush > peel", "assignment=spy-assignment")))
                .isEmpty();
    }

    @Test
    void amb_11_a_wide_alignment_left_a_big_lane() {
        String[] rep = {"[down-block]", "alignment=wide-9", "faults=no-squeeze"};
        assertThat(under("spill-assignment", rep)).containsExactly("fit-wrong");
        assertThat(under("two-gap-assignment", rep)).containsExactly("fit-wrong");
        assertThat(under("contain-force-assignment", rep))
                .as("how far he closes is the call's")
                .isEmpty();
        assertThat(under("", rep)).isEmpty();
    }

    @Test
    void amb_12_he_was_upfield_at_the_snap() {
        String[] rep = {"[down-block]", "faults=too-far-upfield"};
        assertThat(under("spill-assignment", rep)).containsExactly("fit-wrong");
        assertThat(hangsOn("fit-wrong", run("[down-block]", "faults=too-far-upfield", "assignment=spill-assignment")))
                .singleElement()
                .asString()
                .contains("passing down");
        assertThat(under("contain-force-assignment", rep)).isEmpty();
        assertThat(under("spill-assignment", and(rep, "movement=yes"))).isEmpty();
    }

    @Test
    void amb_13_he_stayed_on_his_man() {
        // The reviewed rows judge the answer; whether he should have come off is a finding's question, not a wrong fit.
        String[] rep = {"[base-block] > lock-out", "faults=stuck-on-block", "shed=none", "ball_reach=in-his-lane"};
        assertThat(under("spill-assignment", rep)).containsExactly("fit-right");
        assertThat(under("two-gap-assignment", rep)).containsExactly("fit-right");
        assertThat(under("", rep)).isEmpty();
    }

    @Test
    void amb_14_he_dropped() {
        for (String duty : List.of("spill-assignment", "contain-force-assignment", "assignment-unknown")) {
            assertThat(verdicts(rep(
                            "[arc-block] > flat-drop > squeeze-down",
                            "phase=drop",
                            "assignment=" + duty,
                            "results=edge-lost-outside",
                            "faults=too-far-upfield")))
                    .as(duty)
                    .isEmpty();
        }
    }

    @Test
    void amb_15_he_went_down_on_contact() {
        assertThat(under("spill-assignment", "[kick-out-block] > wrong-arm", "faults=falls-on-spill", "bodies_taken=1"))
                .containsExactly("fit-right", "fit-right-not-carried-out");
        assertThat(under("spill-assignment", "[kick-out-block]", "faults=falls-on-spill", "bodies_taken=1"))
                .containsExactly("fit-wrong");
        assertThat(under(
                        "spill-assignment",
                        "[kick-out-block] > wrong-arm",
                        "results=edge-grounded;two-blockers-taken",
                        "bodies_taken=2"))
                .containsExactly("fit-right");
    }

    @Test
    void amb_16_he_widened_with_the_man_who_left() {
        String[] rep = {"[arc-block]", "faults=widens-with-arc"};
        assertThat(under("read-quarterback-assignment", rep)).containsExactly("fit-wrong");
        assertThat(hangsOn(
                        "fit-wrong",
                        run("[arc-block]", "faults=widens-with-arc", "assignment=read-quarterback-assignment")))
                .singleElement()
                .asString()
                .contains("man coverage");
        assertThat(under("bcr-assignment", rep)).isEmpty();
        assertThat(under("", rep)).isEmpty();
    }

    @Test
    void amb_17_he_boxed_well_and_the_ball_went_around_him() {
        String[] rep = {"[pull-and-kick-block] > box-and-squeeze", "results=edge-lost-outside;ball-bounced"};
        assertThat(under("contain-force-assignment", rep)).containsExactly("edge-lost-by-duty", "fit-right");
        assertThat(under("spill-assignment", rep)).as("force was another man's").containsExactly("fit-wrong");
        assertThat(under("", rep)).containsExactly("fit-depends");
    }

    @Test
    void the_most_specific_block_wins() {
        assertThat(under("spill-assignment", "[sift-block] > squeeze-down")).containsExactly("fit-right");
        assertThat(under("spill-assignment", "[kick-out-block] > squeeze-down")).containsExactly("fit-unlisted");
        assertThat(under("spill-assignment", "[sift-block]", "faults=wrong-shoulder"))
                .isEmpty();
    }

    @Test
    void each_block_is_judged_against_the_step_that_answers_it() {
        // Setting the edge is right against the reach and would be wrong against the kick-out that comes later.
        assertThat(under(
                        "spill-assignment",
                        "[reach-block] > set-the-edge > [kick-out-block] > wrong-arm",
                        "gap=outside"))
                .containsExactly("fit-right");
        assertThat(under("spill-assignment", "squeeze-down > [kick-out-block] > wrong-arm > ricochet"))
                .containsExactly("fit-right");
    }

    @Test
    void one_wrong_answer_makes_the_rep_wrong_whatever_was_right_before() {
        assertThat(under("spill-assignment", "[down-block] > squeeze-down > [kick-out-block] > box-and-squeeze"))
                .containsExactly("fit-wrong");
    }

    @Test
    void a_backside_row_speaks_only_when_the_run_is_known_to_go_away() {
        String rep = "[base-block] > stack-and-shed";
        assertThat(under("chase-assignment", rep, "direction=run-away")).containsExactly("fit-right");
        assertThat(under("chase-assignment", rep, "direction=run-at-him")).isEmpty();
        assertThat(under("chase-assignment", rep)).isEmpty();
    }

    @Test
    void no_rep_gets_two_verdicts_and_no_moved_rep_gets_one() {
        List<Reading> reps = new RandomReps(Reps.TAXONOMY, 42).some(3000);
        int judged = 0;
        for (Reading rep : reps) {
            Set<String> verdicts = verdicts(rep);
            verdicts.removeIf(name -> name.startsWith("edge") || name.equals("fit-right-not-carried-out"));
            assertThat(verdicts).as(rep.toString()).hasSizeLessThan(2);
            if (rep.all("movement").contains("yes")) {
                assertThat(verdicts).as(rep.toString()).isEmpty();
            }
            judged += verdicts.size();
        }
        assertThat(judged).isGreaterThan(200);
    }

    private static Set<String> under(String duty, String exchange, String... cells) {
        return verdicts(run(exchange, duty.isEmpty() ? cells : and(cells, "assignment=" + duty)));
    }

    private static Set<String> under(String duty, String[] rep) {
        return under(duty, rep[0], List.of(rep).subList(1, rep.length).toArray(String[]::new));
    }

    private static String[] and(String[] cells, String more) {
        List<String> all = new ArrayList<>(List.of(cells));
        all.add(more);
        return all.toArray(String[]::new);
    }

    private static Set<String> verdicts(Reading reading) {
        Set<String> classes = new TreeSet<>(Reps.classes(reading));
        classes.retainAll(VERDICTS);
        return classes;
    }

    private static Set<String> hangsOn(String repClass, Reading reading) {
        Set<String> words = new TreeSet<>();
        RULES.explain(reading, CHARTED).stream()
                .filter(e -> e.repClass().equals(repClass))
                .forEach(e -> words.addAll(e.hangsOn()));
        return words;
    }
}
