package rushlight.plan;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;
import java.util.function.Predicate;

/** The constraints that follow a skill through the block: C09, C10, C12 to C18. */
final class CpSkills {
    private final CpPlan plan;
    private final PlanTask task;
    private final PlanLimits limits;

    CpSkills(CpPlan plan) {
        this.plan = plan;
        this.task = plan.task;
        this.limits = task.limits();
    }

    void add() {
        for (Focus focus : task.foci()) {
            for (Exercise drill : task.drillsOf(focus.skill())) {
                ladder(focus, drill);
                uses(drill);
            }
            dose(focus);
            keptUp(focus);
            notInARow(focus);
            checks(focus);
            if (focus.safety() && plan.sessions > 0) {
                LinearExprBuilder opening = LinearExpr.newBuilder();
                plan.sets(opening, focus.skill(), 0, 1);
                plan.atLeast(Rule.of("C15"), opening, 1);
            }
        }
    }

    private void ladder(Focus focus, Exercise drill) {
        boolean contact = limits.isContact(drill.rank());
        if (!contact && !limits.isControl(drill.rank())) {
            return;
        }
        List<Exercise> before = task.drillsOf(focus.skill()).stream()
                .filter(
                        contact
                                ? d -> limits.isControl(d.rank())
                                : (Predicate<Exercise>) d -> d.rank() < limits.contactRank() - 1)
                .toList();
        int sets = contact ? limits.controlSets() : limits.lighterSetsOf(focus);
        int first = contact ? limits.firstSetsForContact() : limits.firstSets();
        for (int t = 0; t < plan.sessions; t++) {
            BoolVar stands = plan.stands(drill, t);
            LinearExprBuilder lighter = LinearExpr.newBuilder().addTerm(stands, -sets);
            for (int s = 0; s < t; s++) {
                for (Exercise d : before) {
                    lighter.add(plan.stands(d, s));
                }
            }
            plan.atLeast(Rule.of("C09"), lighter, 0);
            for (String skill : focus.first()) {
                LinearExprBuilder done = LinearExpr.newBuilder().addTerm(stands, -first);
                for (int s = 0; s < t; s++) {
                    plan.sets(done, skill, s, 1);
                }
                plan.atLeast(Rule.of("C10"), done, 0);
            }
            if (contact) {
                safety(focus, stands, t);
            }
        }
    }

    private void safety(Focus focus, BoolVar stands, int t) {
        if (focus.safety()) {
            plan.never(Rule.of("C15"), stands);
        }
        for (Focus flagged : task.foci()) {
            if (flagged.safety()) {
                LinearExprBuilder checked = LinearExpr.newBuilder().addTerm(stands, -1);
                for (Exercise check : task.checksOf(flagged.skill())) {
                    for (int s = 0; s < t; s++) {
                        checked.add(plan.stands(check, s));
                    }
                }
                plan.atLeast(Rule.of("C18"), checked, 0);
            }
        }
    }

    private void uses(Exercise drill) {
        LinearExprBuilder uses = LinearExpr.newBuilder();
        for (int t = 0; t < plan.sessions; t++) {
            uses.add(plan.stands(drill, t));
        }
        plan.atMost(Rule.of("C17"), uses, drill.mostSets());
    }

    private void dose(Focus focus) {
        LinearExprBuilder sets = LinearExpr.newBuilder();
        for (int t = 0; t < plan.sessions; t++) {
            plan.sets(sets, focus.skill(), t, 1);
        }
        plan.atLeast(new Rule("C13", focus.skill()), sets, focus.fewest());
        plan.model.addLessOrEqual(sets.build(), focus.most());
    }

    private void keptUp(Focus focus) {
        for (int s = 0; s < plan.sessions; s++) {
            for (int week = task.slots().get(s).week() + 1; week <= task.lastWeek(); week++) {
                LinearExprBuilder kept = LinearExpr.newBuilder();
                plan.sets(kept, focus.skill(), s, -1);
                boolean met = false;
                for (int t = 0; t < plan.sessions; t++) {
                    if (task.slots().get(t).week() == week) {
                        plan.work(kept, focus.skill(), t);
                        met = true;
                    }
                }
                if (met) {
                    plan.atLeast(Rule.of("C12"), kept, 0);
                }
            }
        }
    }

    private void notInARow(Focus focus) {
        for (int t = 0; t + 2 < plan.sessions; t++) {
            LinearExprBuilder three = LinearExpr.newBuilder();
            for (int s = t; s <= t + 2; s++) {
                plan.work(three, focus.skill(), s);
            }
            plan.atMost(Rule.of("C16"), three, limits.inThreeSessions());
        }
    }

    private void checks(Focus focus) {
        LinearExprBuilder all = LinearExpr.newBuilder();
        for (Exercise check : task.checksOf(focus.skill())) {
            for (int t = 0; t < plan.sessions; t++) {
                BoolVar checked = plan.stands(check, t);
                all.add(checked);
                if (task.slots().get(t).week() != task.lastWeek()) {
                    plan.model.addEquality(checked, 0);
                }
                for (int s = t; s < plan.sessions; s++) {
                    LinearExprBuilder both = LinearExpr.newBuilder().add(checked);
                    plan.sets(both, focus.skill(), s, 1);
                    plan.model.addLessOrEqual(both.build(), 1);
                }
            }
        }
        plan.model.addLessOrEqual(all.build(), 1);
        if (focus.gap()) {
            plan.atLeast(new Rule("C14", focus.skill()), all, 1);
        }
    }
}
