package rushlight.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/** Holds a schedule to what is counted by day and by week: full contact, spread of a skill, keeping it up, rest. */
final class WeekCheck {
    private final PlanTask task;
    private final PlanLimits limits;
    private final List<List<Exercise>> plan;
    private final UnaryOperator<String> names;
    private final List<Breach> breaches;

    WeekCheck(PlanTask task, List<List<Exercise>> plan, UnaryOperator<String> names, List<Breach> breaches) {
        this.task = task;
        this.limits = task.limits();
        this.plan = plan;
        this.names = names;
        this.breaches = breaches;
    }

    void check() {
        days();
        Set<Integer> weeks = new TreeSet<>();
        task.slots().forEach(slot -> weeks.add(slot.week()));
        Set<String> begun = new HashSet<>();
        for (int week : weeks) {
            week(week, begun);
        }
    }

    private void days() {
        TreeMap<Integer, int[]> days = new TreeMap<>();
        for (int s = 0; s < plan.size(); s++) {
            int[] day = days.computeIfAbsent(task.slots().get(s).day(), d -> new int[2]);
            day[0] += contact(plan.get(s));
            day[1] += task.slots().get(s).teamContactMinutes();
        }
        days.forEach((number, day) -> {
            if (day[0] > 0 && day[0] + day[1] > limits.contactMinutesADay()) {
                add("C03", label(number), contactWords(day[0], day[1]) + ", at most " + limits.contactMinutesADay());
            }
            int[] before = days.getOrDefault(number - 1, new int[2]);
            if (day[0] + day[1] > 0 && before[0] + before[1] > 0 && day[0] + before[0] > 0) {
                add("C03", label(number), "full contact on two days in a row");
            }
        });
    }

    private void week(int week, Set<String> begun) {
        int own = 0;
        int team = 0;
        int minutes = 0;
        Set<Integer> days = new HashSet<>();
        Map<String, Integer> sessions = new TreeMap<>();
        Set<String> trained = new HashSet<>();
        for (int s = 0; s < plan.size(); s++) {
            Slot slot = task.slots().get(s);
            if (slot.week() != week) {
                continue;
            }
            own += contact(plan.get(s));
            team += slot.teamContactMinutes();
            for (Exercise item : plan.get(s)) {
                minutes += item.minutes();
                days.add(slot.day());
                if (!item.check()) {
                    trained.add(item.skill());
                }
            }
            plan.get(s).stream().map(Exercise::skill).distinct().forEach(k -> sessions.merge(k, 1, Integer::sum));
        }
        String where = "week " + week;
        if (own > limits.ownContactMinutesAWeek() || (own > 0 && own + team > limits.contactMinutesAWeek())) {
            add(
                    "C03",
                    where,
                    contactWords(own, team) + ", at most " + limits.ownContactMinutesAWeek() + " of the plan"
                            + (limits.contactMinutesAWeek() == Integer.MAX_VALUE
                                    ? ""
                                    : " and " + limits.contactMinutesAWeek() + " in all"));
        }
        if (days.size() > limits.daysAWeek() || minutes > limits.minutesAWeek()) {
            add(
                    "C21",
                    where,
                    days.size() + " days and " + minutes + " min, at most " + limits.daysAWeek() + " days and "
                            + limits.minutesAWeek() + " min");
        }
        sessions.forEach((skill, count) -> {
            if (count > limits.sessionsAWeek()) {
                add("C11", where, names.apply(skill) + " in " + count + " sessions, at most " + limits.sessionsAWeek());
            }
        });
        begun.stream().sorted().filter(skill -> !sessions.containsKey(skill)).forEach(skill -> {
            breaches.add(
                    new Breach(Rule.of("C12"), where, "nothing of " + names.apply(skill) + ", begun before", true));
        });
        begun.addAll(trained);
    }

    /** The session of a day of the block. */
    private String label(int day) {
        return task.slots().stream()
                .filter(slot -> slot.day() == day)
                .map(Slot::label)
                .findFirst()
                .orElse("");
    }

    private static String contactWords(int own, int team) {
        return own + " min of full contact" + (team > 0 ? " on top of the team's " + team : "");
    }

    private int contact(List<Exercise> items) {
        return items.stream()
                .filter(item -> !item.check() && limits.isContact(item.rank()))
                .mapToInt(Exercise::minutes)
                .sum();
    }

    private void add(String code, String where, String text) {
        breaches.add(new Breach(Rule.of(code), where, text, false));
    }
}
