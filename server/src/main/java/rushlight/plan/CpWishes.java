package rushlight.plan;

import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;

/** What a person decided, as constraints of the model. */
final class CpWishes {
    private final CpPlan plan;

    CpWishes(CpPlan plan) {
        this.plan = plan;
    }

    void add() {
        for (Wish wish : plan.task.wishes()) {
            Rule rule = WishCheck.rule(plan.task, wish);
            if (wish instanceof Wish.Pin pin) {
                LinearExprBuilder pinned = LinearExpr.newBuilder().add(plan.stands(pin.exercise(), pin.session()));
                plan.atLeast(rule, pinned, 1);
            } else if (wish instanceof Wish.Drop drop) {
                plan.never(rule, plan.stands(drop.exercise(), drop.session()));
            } else if (wish instanceof Wish.Leave leave) {
                for (int t = 0; t < plan.sessions; t++) {
                    plan.never(rule, plan.stands(leave.exercise(), t));
                }
            } else if (wish instanceof Wish.Before before) {
                before(rule, before);
            }
        }
    }

    private void before(Rule rule, Wish.Before wish) {
        for (int t = 0; t < plan.sessions; t++) {
            LinearExprBuilder earlier = LinearExpr.newBuilder().addTerm(plan.stands(wish.later(), t), -1);
            for (int s = 0; s < t; s++) {
                earlier.add(plan.stands(wish.earlier(), s));
            }
            plan.atLeast(rule, earlier, 0);
        }
    }
}
