package rushlight.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Eight weeks are more than the limit of work proves: the plan still keeps every rule, with a bound. */
class EffortTest {
    @Test
    void eight_weeks_give_a_plan_with_a_bound_near_it() {
        PlanTask task = new WorkedExample().taskOfEightWeeks();
        Schedule.Found found = (Schedule.Found) Scheduler.best().solve(task);
        assertThat(PlanCheck.of(task, found.sessions())).isEmpty();
        assertThat(found.bound()).isGreaterThanOrEqualTo(found.value());
        assertThat(found.betterAtMost()).isLessThan(10);
    }
}
