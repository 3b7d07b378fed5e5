package rushlight.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What can be said of a task without searching: that something it must have fits no session at all. */
final class Outright {
    private Outright() {}

    /** The reasons in words; empty where every single thing has a session it fits. */
    static List<String> reasons(PlanTask task) {
        List<String> reasons = new ArrayList<>();
        for (Focus focus : task.foci()) {
            List<Slot> last = task.slots().stream()
                    .filter(slot -> slot.week() == task.lastWeek())
                    .toList();
            if (focus.gap() && task.checksOf(focus.skill()).isEmpty()) {
                reasons.add("nothing checks " + focus.skill() + " at the end");
            } else if (focus.gap()) {
                fits(reasons, task, task.checksOf(focus.skill()), last, "in the last week");
            }
            if (focus.fewest() > 0) {
                fits(reasons, task, task.drillsOf(focus.skill()), task.slots(), "in the block");
            }
            if (focus.safety() && !task.slots().isEmpty()) {
                fits(reasons, task, task.drillsOf(focus.skill()), task.slots().subList(0, 1), "in the first session");
            }
        }
        return List.copyOf(reasons);
    }

    private static void fits(
            List<String> reasons, PlanTask task, List<Exercise> exercises, List<Slot> slots, String where) {
        if (exercises.stream()
                .anyMatch(e ->
                        slots.stream().anyMatch(slot -> lacks(task, e, slot).isEmpty()))) {
            return;
        }
        for (Exercise e : exercises) {
            reasons.add("no session " + where + " has what " + e.slug() + " takes: "
                    + slots.stream()
                            .flatMap(
                                    slot -> lacks(task, e, slot).stream().map(lack -> lack + " (" + slot.label() + ")"))
                            .reduce((a, b) -> a + ", " + b)
                            .orElse("there is no session"));
        }
    }

    private static List<String> lacks(PlanTask task, Exercise e, Slot slot) {
        Predicate<String> missing = slot.without()::contains;
        List<String> lacks = new ArrayList<>();
        if (e.people() > slot.people()) {
            lacks.add(slot.people() + " men for " + e.people());
        }
        if (e.minutes() > slot.minutes()) {
            lacks.add(slot.minutes() + " min for " + e.minutes());
        }
        if (e.rank() > Math.min(slot.highest(), task.limits().approvedRank())) {
            lacks.add("contact is too light");
        }
        e.equipment().stream().filter(missing).sorted().forEach(thing -> lacks.add("no " + thing));
        return lacks;
    }
}
