package rushlight.plan;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Constraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The task as an integer model: a variable says whether an exercise stands in a session, the constraints are linear. A rule can
 * be left out, and a rule that may give way can be given a variable that says whether it does.
 */
final class CpPlan {
    final CpModel model = new CpModel();
    final PlanTask task;
    final int sessions;
    private final Set<Rule> out;
    private final boolean elastic;
    private final Map<String, BoolVar[]> stands = new HashMap<>();
    private final Map<Rule, BoolVar> gives = new TreeMap<>();

    /**
     * @param out rules left out
     * @param elastic whether the rules that may give way do, for a price
     */
    CpPlan(PlanTask task, Set<Rule> out, boolean elastic) {
        this.task = task;
        this.sessions = task.slots().size();
        this.out = out;
        this.elastic = elastic;
        for (Exercise e : task.exercises()) {
            BoolVar[] row = new BoolVar[sessions];
            for (int t = 0; t < sessions; t++) {
                row[t] = model.newBoolVar(e.slug() + "@" + t);
            }
            stands.put(e.slug(), row);
        }
        new CpSessions(this).add();
        new CpSkills(this).add();
        new CpWishes(this).add();
    }

    /** Whether an exercise stands in a session. */
    BoolVar stands(Exercise exercise, int session) {
        return stands(exercise.slug(), session);
    }

    BoolVar stands(String slug, int session) {
        BoolVar[] row = stands.get(slug);
        if (row == null) {
            throw new IllegalArgumentException(slug + " is not among the drills of this plan");
        }
        return row[session];
    }

    /** The sets of a skill in a session, without its check. */
    void sets(LinearExprBuilder sum, String skill, int session, long times) {
        task.drillsOf(skill).forEach(drill -> sum.addTerm(stands(drill, session), times));
    }

    /** The same with the check. */
    void work(LinearExprBuilder sum, String skill, int session) {
        sets(sum, skill, session, 1);
        task.checksOf(skill).forEach(check -> sum.add(stands(check, session)));
    }

    /** At most so much, unless the rule is left out or gives way. */
    void atMost(Rule rule, LinearExprBuilder sum, long most) {
        if (!out.contains(rule)) {
            when(rule, model.addLessOrEqual(sum.build(), most));
        }
    }

    /** At least so much, unless the rule is left out or gives way. */
    void atLeast(Rule rule, LinearExprBuilder sum, long least) {
        if (!out.contains(rule)) {
            when(rule, model.addGreaterOrEqual(sum.build(), least));
        }
    }

    /** Not at all, unless the rule is left out or gives way. */
    void never(Rule rule, BoolVar variable) {
        atMost(rule, LinearExpr.newBuilder().add(variable), 0);
    }

    private void when(Rule rule, Constraint constraint) {
        if (elastic && Price.of(task, rule) > 0) {
            Literal kept = gives.computeIfAbsent(rule, r -> model.newBoolVar("gives " + r))
                    .not();
            constraint.onlyEnforceIf(kept);
        }
    }

    /** Asks for the schedule that is worth most. */
    void maximizeWorth() {
        LinearExprBuilder worth = LinearExpr.newBuilder();
        PlanLimits limits = task.limits();
        for (Focus focus : task.foci()) {
            List<Exercise> drills = task.drillsOf(focus.skill());
            for (int t = 0; t < sessions; t++) {
                for (Exercise drill : drills) {
                    int cost = limits.isContact(drill.rank()) ? drill.minutes() : 0;
                    worth.addTerm(stands(drill, t), focus.weight() - cost);
                }
            }
            reached(
                    worth,
                    focus.weight() / 2,
                    drills.stream().filter(d -> limits.isControl(d.rank())).toList());
            if (focus.gap()) {
                reached(
                        worth,
                        focus.weight(),
                        drills.stream().filter(d -> limits.isContact(d.rank())).toList());
            }
        }
        model.maximize(worth.build());
    }

    private void reached(LinearExprBuilder worth, int bonus, List<Exercise> drills) {
        BoolVar reached = model.newBoolVar("reached");
        LinearExprBuilder sum = LinearExpr.newBuilder().addTerm(reached, -1);
        drills.forEach(drill -> {
            for (int t = 0; t < sessions; t++) {
                sum.add(stands(drill, t));
            }
        });
        model.addGreaterOrEqual(sum.build(), 0);
        worth.addTerm(reached, bonus);
    }

    /** Asks for the schedule that gives up least. */
    void minimizeGivenUp() {
        LinearExprBuilder price = LinearExpr.newBuilder();
        gives.forEach((rule, given) -> price.addTerm(given, Price.of(task, rule)));
        model.minimize(price.build());
    }

    /** The rules that may give way, each with the variable that says whether it does. */
    Map<Rule, BoolVar> gives() {
        return gives;
    }

    /** Every rule that the model of a task has. */
    static List<Rule> rules(PlanTask task) {
        List<Rule> rules = new ArrayList<>();
        task.wishes().forEach(wish -> rules.add(WishCheck.rule(task, wish)));
        for (String code : "C17 C16 C12 C11 C07 C06 C08 C21 C20 C18 C15 C10 C09 C03 C02 C04 C05 C01".split(" ", -1)) {
            rules.add(Rule.of(code));
        }
        task.foci().forEach(focus -> rules.add(new Rule("C13", focus.skill())));
        task.foci().stream().filter(Focus::gap).forEach(focus -> rules.add(new Rule("C14", focus.skill())));
        return rules.stream().distinct().toList();
    }
}
