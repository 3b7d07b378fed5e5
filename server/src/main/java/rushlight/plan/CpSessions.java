package rushlight.plan;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The constraints of the single session, the day and the week: C01 to C08, C11, C20 and C21. */
final class CpSessions {
    private final CpPlan plan;
    private final PlanTask task;
    private final PlanLimits limits;

    CpSessions(CpPlan plan) {
        this.plan = plan;
        this.task = plan.task;
        this.limits = task.limits();
    }

    void add() {
        for (int t = 0; t < plan.sessions; t++) {
            session(t);
        }
        contactByDay();
        TreeMap<Integer, List<Integer>> weeks = new TreeMap<>();
        TreeMap<Integer, List<Integer>> days = new TreeMap<>();
        for (int t = 0; t < plan.sessions; t++) {
            weeks.computeIfAbsent(task.slots().get(t).week(), w -> new ArrayList<>())
                    .add(t);
            days.computeIfAbsent(task.slots().get(t).day(), d -> new ArrayList<>())
                    .add(t);
        }
        weeks.values().forEach(sessions -> week(sessions, days));
    }

    private void session(int t) {
        Slot slot = task.slots().get(t);
        LinearExprBuilder minutes = LinearExpr.newBuilder();
        for (Exercise e : task.exercises()) {
            BoolVar stands = plan.stands(e, t);
            minutes.addTerm(stands, e.minutes());
            neverIf(e.rank() > slot.highest(), "C02", stands);
            neverIf(e.rank() > limits.approvedRank(), "C20", stands);
            neverIf(e.equipment().stream().anyMatch(slot.without()::contains), "C04", stands);
            neverIf(e.people() > slot.people(), "C05", stands);
        }
        plan.atMost(Rule.of("C01"), minutes, slot.minutes());
        LinearExprBuilder foci = LinearExpr.newBuilder();
        LinearExprBuilder begun = LinearExpr.newBuilder();
        for (Focus focus : task.foci()) {
            LinearExprBuilder work = LinearExpr.newBuilder();
            plan.work(work, focus.skill(), t);
            plan.work(foci, focus.skill(), t);
            plan.atMost(Rule.of("C08"), work, 1);
            BoolVar first = plan.model.newBoolVar("first " + focus.skill() + "@" + t);
            LinearExprBuilder before = LinearExpr.newBuilder().addTerm(first, -1);
            plan.sets(before, focus.skill(), t, 1);
            for (int s = 0; s < t; s++) {
                plan.sets(before, focus.skill(), s, -1);
            }
            plan.model.addLessOrEqual(before.build(), 0);
            begun.add(first);
        }
        plan.atMost(Rule.of("C06"), foci, limits.foci());
        plan.atMost(Rule.of("C07"), begun, limits.newFociIn(slot.week()));
    }

    private void neverIf(boolean forbidden, String code, BoolVar stands) {
        if (forbidden) {
            plan.never(Rule.of(code), stands);
        }
    }

    private void contactByDay() {
        TreeMap<Integer, LinearExprBuilder> minutes = new TreeMap<>();
        TreeMap<Integer, Integer> team = new TreeMap<>();
        TreeMap<Integer, BoolVar> has = new TreeMap<>();
        for (int t = 0; t < plan.sessions; t++) {
            Slot slot = task.slots().get(t);
            team.merge(slot.day(), slot.teamContactMinutes(), Integer::sum);
            BoolVar contact = has.computeIfAbsent(slot.day(), d -> plan.model.newBoolVar("contact on day " + d));
            LinearExprBuilder sum = minutes.computeIfAbsent(slot.day(), d -> LinearExpr.newBuilder());
            for (Exercise e : task.exercises()) {
                if (counts(e)) {
                    sum.addTerm(plan.stands(e, t), e.minutes());
                    plan.model.addImplication(plan.stands(e, t), contact);
                }
            }
        }
        minutes.forEach((day, sum) -> {
            int taken = team.getOrDefault(day, 0);
            plan.atMost(Rule.of("C03"), sum, Math.max(0, limits.contactMinutesADay() - taken));
        });
        has.forEach((day, own) -> {
            BoolVar next = has.get(day + 1);
            if (next != null && team.getOrDefault(day + 1, 0) > 0) {
                plan.never(Rule.of("C03"), own);
            }
            if (next != null && team.getOrDefault(day, 0) > 0) {
                plan.never(Rule.of("C03"), next);
            }
            if (next != null) {
                plan.atMost(Rule.of("C03"), LinearExpr.newBuilder().add(own).add(next), 1);
            }
        });
    }

    private boolean counts(Exercise e) {
        return !e.check() && limits.isContact(e.rank());
    }

    private void week(List<Integer> sessions, Map<Integer, List<Integer>> days) {
        LinearExprBuilder own = LinearExpr.newBuilder();
        LinearExprBuilder minutes = LinearExpr.newBuilder();
        int team = 0;
        for (int t : sessions) {
            team += task.slots().get(t).teamContactMinutes();
            for (Exercise e : task.exercises()) {
                minutes.addTerm(plan.stands(e, t), e.minutes());
                if (counts(e)) {
                    own.addTerm(plan.stands(e, t), e.minutes());
                }
            }
        }
        int most = Math.min(limits.ownContactMinutesAWeek(), Math.max(0, limits.contactMinutesAWeek() - team));
        plan.atMost(Rule.of("C03"), own, most);
        plan.atMost(Rule.of("C21"), minutes, limits.minutesAWeek());
        practiceDays(sessions, days);
        for (Focus focus : task.foci()) {
            LinearExprBuilder work = LinearExpr.newBuilder();
            sessions.forEach(t -> plan.work(work, focus.skill(), t));
            plan.atMost(Rule.of("C11"), work, limits.sessionsAWeek());
        }
    }

    private void practiceDays(List<Integer> sessions, Map<Integer, List<Integer>> days) {
        List<Integer> numbers =
                sessions.stream().map(t -> task.slots().get(t).day()).distinct().toList();
        if (numbers.size() <= limits.daysAWeek()) {
            return;
        }
        LinearExprBuilder used = LinearExpr.newBuilder();
        for (int day : numbers) {
            BoolVar practice = plan.model.newBoolVar("practice on day " + day);
            used.add(practice);
            for (int t : days.getOrDefault(day, List.of())) {
                task.exercises().forEach(e -> plan.model.addImplication(plan.stands(e, t), practice));
            }
        }
        plan.atMost(Rule.of("C21"), used, limits.daysAWeek());
    }
}
