package rushlight.plan;

import java.util.List;

/**
 * Finds the schedule of a task. Where the solver's library does not load, a simpler search takes its place and says so: its
 * schedules are not proven best. Whoever made it, a schedule that breaks a rule is never handed out.
 */
public final class Scheduler {
    private final boolean exact;

    private Scheduler(boolean exact) {
        this.exact = exact;
    }

    /** The best there is on this machine. */
    public static Scheduler best() {
        return new Scheduler(ExactPlans.available());
    }

    /** The search that needs no library. */
    public static Scheduler simple() {
        return new Scheduler(false);
    }

    /** Whether schedules come with a proof. */
    public boolean isExact() {
        return exact;
    }

    /**
     * The schedule of a task, or why there is none.
     *
     * @throws IllegalStateException where what was found breaks a rule: a fault of this program
     */
    public Schedule solve(PlanTask task) {
        return held(task, exact ? ExactPlans.solve(task, true) : GreedyPlans.solve(task));
    }

    /**
     * The schedule of a task; where there is none, without looking for the rules that clash.
     *
     * @throws IllegalStateException where what was found breaks a rule: a fault of this program
     */
    Schedule find(PlanTask task) {
        return held(task, exact ? ExactPlans.solve(task, false) : GreedyPlans.solve(task));
    }

    private static Schedule held(PlanTask task, Schedule schedule) {
        if (schedule instanceof Schedule.Found found) {
            List<Breach> breaches = PlanCheck.of(task, found.sessions());
            if (!breaches.isEmpty() || Worth.of(task, found.sessions()) != found.value()) {
                throw new IllegalStateException("A schedule breaks its own rules: " + breaches);
            }
        }
        return schedule;
    }
}
