package rushlight.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What a schedule is worth: the weight of every set, half the weight for a skill that was trained one rank below full contact,
 * the weight for a gap that was trained at full contact, less a point for each minute of full contact.
 */
final class Worth {
    private Worth() {}

    static int of(PlanTask task, List<List<String>> sessions) {
        Map<String, Exercise> known = task.bySlug();
        int worth = 0;
        for (Focus focus : task.foci()) {
            Set<String> rungs = new HashSet<>();
            for (List<String> session : sessions) {
                for (String slug : session) {
                    Exercise item = Objects.requireNonNull(known.get(slug));
                    if (item.check() || !item.skill().equals(focus.skill())) {
                        continue;
                    }
                    worth += focus.weight();
                    if (task.limits().isControl(item.rank()) && rungs.add("control")) {
                        worth += focus.weight() / 2;
                    }
                    if (task.limits().isContact(item.rank())) {
                        worth += focus.gap() && rungs.add("contact") ? focus.weight() : 0;
                        worth -= item.minutes();
                    }
                }
            }
        }
        return worth;
    }
}
