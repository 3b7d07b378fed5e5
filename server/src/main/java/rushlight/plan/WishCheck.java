package rushlight.plan;

import java.util.List;
import java.util.function.UnaryOperator;

/** Holds a schedule to what a person decided, and says it in words. */
final class WishCheck {
    private WishCheck() {}

    static void check(PlanTask task, List<List<String>> sessions, UnaryOperator<String> names, List<Breach> breaches) {
        for (Wish wish : task.wishes()) {
            boolean lacking = wish instanceof Wish.Pin;
            if (!kept(wish, sessions)) {
                breaches.add(new Breach(rule(task, wish, names), "", "not kept", lacking));
            }
        }
    }

    private static boolean kept(Wish wish, List<List<String>> sessions) {
        if (wish instanceof Wish.Pin pin) {
            return sessions.get(pin.session()).contains(pin.exercise());
        }
        if (wish instanceof Wish.Drop drop) {
            return !sessions.get(drop.session()).contains(drop.exercise());
        }
        if (wish instanceof Wish.Leave leave) {
            return sessions.stream().noneMatch(session -> session.contains(leave.exercise()));
        }
        Wish.Before before = (Wish.Before) wish;
        int later = first(sessions, before.later());
        int earlier = first(sessions, before.earlier());
        return later < 0 || (earlier >= 0 && earlier < later);
    }

    private static int first(List<List<String>> sessions, String slug) {
        for (int s = 0; s < sessions.size(); s++) {
            if (sessions.get(s).contains(slug)) {
                return s;
            }
        }
        return -1;
    }

    /** The wish as a rule of the schedule. */
    static Rule rule(PlanTask task, Wish wish) {
        return rule(task, wish, UnaryOperator.identity());
    }

    private static Rule rule(PlanTask task, Wish wish, UnaryOperator<String> names) {
        if (wish instanceof Wish.Pin pin) {
            return new Rule(
                    "W",
                    names.apply(pin.exercise()) + " in "
                            + task.slots().get(pin.session()).label());
        }
        if (wish instanceof Wish.Drop drop) {
            return new Rule(
                    "W",
                    "no " + names.apply(drop.exercise()) + " in "
                            + task.slots().get(drop.session()).label());
        }
        if (wish instanceof Wish.Leave leave) {
            return new Rule("W", "no " + names.apply(leave.exercise()));
        }
        Wish.Before before = (Wish.Before) wish;
        return new Rule("W", names.apply(before.earlier()) + " before " + names.apply(before.later()));
    }
}
