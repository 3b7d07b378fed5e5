package rushlight.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The worked example: its values and the rules that its mutants break were computed outside this program. */
class WorkedExampleTest {
    private static final WorkedExample EXAMPLE = new WorkedExample();

    @Test
    void the_plan_made_by_hand_keeps_every_rule_and_is_worth_6481() {
        List<List<String>> byHand = WorkedExample.sessions(EXAMPLE.json.get("byHand"));
        assertThat(PlanCheck.of(EXAMPLE.task(), byHand)).isEmpty();
        assertThat(Worth.of(EXAMPLE.task(), byHand)).isEqualTo(6481);
    }

    @Test
    void the_stored_best_plan_keeps_every_rule_and_is_worth_7568() {
        List<List<String>> best = WorkedExample.sessions(EXAMPLE.json.get("best"));
        assertThat(PlanCheck.of(EXAMPLE.task(), best)).isEmpty();
        assertThat(Worth.of(EXAMPLE.task(), best)).isEqualTo(7568);
    }

    static Stream<Arguments> mutants() {
        return StreamSupport.stream(EXAMPLE.json.get("mutants").spliterator(), false)
                .map(m -> Arguments.of(m.get("name").asText(), m));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mutants")
    void a_mutant_breaks_exactly_its_rules(String name, JsonNode mutant) {
        List<String> expected = StreamSupport.stream(mutant.get("codes").spliterator(), false)
                .map(JsonNode::asText)
                .toList();
        assertThat(PlanCheck.of(EXAMPLE.task(), WorkedExample.sessions(mutant.get("sessions"))))
                .extracting(breach -> breach.rule().code())
                .as(name)
                .containsOnly(expected.toArray(String[]::new))
                .containsAll(expected);
    }

    @Test
    void the_solver_proves_7568_and_finds_the_same_plan_again() {
        assertThat(Scheduler.best().isExact()).isTrue();
        Schedule.Found found = found(Scheduler.best().solve(EXAMPLE.task()));
        assertThat(found.value()).isEqualTo(7568);
        assertThat(found.bound()).isEqualTo(7568);
        assertThat(found.proof()).isEqualTo(Schedule.Proof.BEST);
        assertThat(found.words()).isEqualTo("no better schedule exists under these limits");
        assertThat(Scheduler.best().solve(EXAMPLE.task())).isEqualTo(found);
    }

    @Test
    void too_few_men_for_the_check_are_named_with_what_must_be_given_up() {
        Schedule.Clash clash = (Schedule.Clash) Scheduler.best().solve(EXAMPLE.taskWithThreeMen());
        assertThat(clash.reasons())
                .containsExactly("no session in the last week has what check-stack-the-puller takes: "
                        + "3 men for 4 (week 4 Mon), 3 men for 4 (week 4 Tue), 3 men for 4 (week 4 Wed), "
                        + "2 men for 4 (week 4 Thu), contact is too light (week 4 Thu)");
        assertThat(clash.clash()).containsExactly(Rule.of("C05"), new Rule("C14", "stack-the-puller"));
        // Without the drill of four men one drill is left for the four sets, and it may come three times.
        assertThat(clash.giveUp()).containsExactly(new Rule("C14", "stack-the-puller"), Rule.of("C17"));
    }

    @Test
    void what_a_person_decided_is_kept() {
        Schedule.Found found = found(Scheduler.best()
                .solve(EXAMPLE.task(
                        new Wish.Pin(3, "set-recognition-clips"),
                        new Wish.Leave("puller-read-thud"),
                        new Wish.Drop(0, "rolling-ring-tackle"),
                        new Wish.Before("redirect-two-bag", "inside-step-footprint"))));
        assertThat(found.sessions().get(3)).contains("set-recognition-clips");
        assertThat(found.sessions()).noneMatch(session -> session.contains("puller-read-thud"));
        assertThat(found.sessions().get(0)).doesNotContain("rolling-ring-tackle");
        assertThat(found.value()).isLessThan(7568);
    }

    @Test
    void a_pin_that_breaks_the_ladder_is_what_must_be_given_up() {
        Wish pin = new Wish.Pin(1, "puller-read-thud");
        Schedule.Clash clash = (Schedule.Clash) Scheduler.best().solve(EXAMPLE.task(pin));
        assertThat(clash.giveUp()).containsExactly(new Rule("W", "puller-read-thud in week 1 Tue"));
        assertThat(clash.clash()).contains(new Rule("W", "puller-read-thud in week 1 Tue"));
    }

    @Test
    void without_the_solver_the_plan_keeps_every_rule_and_says_that_it_is_not_proven() {
        Schedule.Found found = found(Scheduler.simple().solve(EXAMPLE.task()));
        assertThat(PlanCheck.of(EXAMPLE.task(), found.sessions())).isEmpty();
        assertThat(found.words()).isEqualTo("not proven best");
        assertThat(found.value()).isBetween(5000, 7568);
        assertThat(Scheduler.simple().solve(EXAMPLE.task())).isEqualTo(found);
    }

    private static Schedule.Found found(Schedule schedule) {
        assertThat(schedule).isInstanceOf(Schedule.Found.class);
        return (Schedule.Found) schedule;
    }
}
