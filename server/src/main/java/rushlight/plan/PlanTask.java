package rushlight.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * All that a schedule is made from.
 *
 * @param slots the sessions in the order of their days
 * @param foci the skills
 * @param exercises the drills and checks; each belongs to one of the skills
 * @param limits the numbers to keep to
 * @param wishes what a person decided
 */
public record PlanTask(
        List<Slot> slots, List<Focus> foci, List<Exercise> exercises, PlanLimits limits, List<Wish> wishes) {
    /** @throws IllegalArgumentException where a name is used twice, is unknown, or the sessions are out of order */
    public PlanTask {
        slots = List.copyOf(slots);
        foci = List.copyOf(foci);
        exercises = List.copyOf(exercises);
        wishes = List.copyOf(wishes);
        Set<String> skills = names(foci, Focus::skill);
        Set<String> known = names(exercises, Exercise::slug);
        exercises.forEach(e -> need(skills.contains(e.skill()), e.slug() + " is for a skill that is not worked on"));
        foci.forEach(f -> need(skills.containsAll(f.first()), f.skill() + " waits for a skill that is not worked on"));
        for (int i = 1; i < slots.size(); i++) {
            need(
                    slots.get(i - 1).day() <= slots.get(i).day()
                            && slots.get(i - 1).week() <= slots.get(i).week(),
                    slots.get(i).label() + " stands after a later session");
        }
        for (Wish wish : wishes) {
            named(wish).forEach(slug -> need(known.contains(slug), slug + " is not among the drills of this plan"));
            need(isInside(wish, slots.size()), "there is no session " + (session(wish) + 1));
        }
    }

    /** The drills and checks by their slugs. */
    public Map<String, Exercise> bySlug() {
        return exercises.stream().collect(Collectors.toMap(Exercise::slug, Function.identity()));
    }

    /** The last week; 0 where there is no session. */
    public int lastWeek() {
        return slots.isEmpty() ? 0 : slots.get(slots.size() - 1).week();
    }

    /** The drills, without the checks, of a skill. */
    List<Exercise> drillsOf(String skill) {
        return exercises.stream()
                .filter(e -> !e.check() && e.skill().equals(skill))
                .toList();
    }

    List<Exercise> checksOf(String skill) {
        return exercises.stream()
                .filter(e -> e.check() && e.skill().equals(skill))
                .toList();
    }

    static List<String> named(Wish wish) {
        if (wish instanceof Wish.Pin pin) {
            return List.of(pin.exercise());
        }
        if (wish instanceof Wish.Drop drop) {
            return List.of(drop.exercise());
        }
        if (wish instanceof Wish.Leave leave) {
            return List.of(leave.exercise());
        }
        Wish.Before before = (Wish.Before) wish;
        return List.of(before.earlier(), before.later());
    }

    /** Whether a wish that names a session names one of so many. */
    static boolean isInside(Wish wish, int sessions) {
        int session = session(wish);
        return session >= 0 && session < Math.max(1, sessions);
    }

    private static int session(Wish wish) {
        return wish instanceof Wish.Pin pin ? pin.session() : wish instanceof Wish.Drop drop ? drop.session() : 0;
    }

    private static <T> Set<String> names(List<T> things, Function<T, String> name) {
        Set<String> names = new HashSet<>();
        things.forEach(thing -> need(names.add(name.apply(thing)), name.apply(thing) + " stands twice"));
        return names;
    }

    private static void need(boolean right, String message) {
        if (!right) {
            throw new IllegalArgumentException(message);
        }
    }
}
