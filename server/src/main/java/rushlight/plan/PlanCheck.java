package rushlight.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Holds a schedule to the constraints, whoever made it. It goes through the sessions once, in order, as a reader would with a
 * pencil; it shares no line with what searches for schedules.
 */
public final class PlanCheck {
    private final PlanTask task;
    private final PlanLimits limits;
    private final UnaryOperator<String> names;
    private final Map<String, Exercise> known;
    private final List<Breach> breaches = new ArrayList<>();
    private final Map<String, History> histories = new HashMap<>();

    /** The sessions in which a skill was trained: all, the lighter, those below full contact, those at it; and its check. */
    private static final class History {
        final List<Integer> all = new ArrayList<>();
        int lighter;
        int control;
        int contact;
        int check = -1;

        boolean on(int session) {
            return check == session || all.contains(session);
        }
    }

    private PlanCheck(PlanTask task, UnaryOperator<String> names) {
        this.task = task;
        this.names = names;
        this.limits = task.limits();
        this.known = task.bySlug();
        task.foci().forEach(f -> histories.put(f.skill(), new History()));
    }

    /**
     * What a schedule breaks; empty where it keeps every rule.
     *
     * @param sessions slugs for each session of the task
     * @throws IllegalArgumentException where the sessions are not as many as those of the task, or a slug is unknown
     */
    public static List<Breach> of(PlanTask task, List<List<String>> sessions) {
        return of(task, sessions, UnaryOperator.identity());
    }

    /**
     * The same in words.
     *
     * @param names what a drill, a check or a skill is called, by its slug
     * @throws IllegalArgumentException where the sessions are not as many as those of the task, or a slug is unknown
     */
    static List<Breach> of(PlanTask task, List<List<String>> sessions, UnaryOperator<String> names) {
        if (sessions.size() != task.slots().size()) {
            throw new IllegalArgumentException(
                    sessions.size() + " sessions for " + task.slots().size());
        }
        PlanCheck check = new PlanCheck(task, names);
        List<List<Exercise>> plan = new ArrayList<>();
        for (List<String> session : sessions) {
            plan.add(session.stream().map(check::known).toList());
        }
        for (int s = 0; s < plan.size(); s++) {
            check.session(s, plan.get(s));
        }
        new WeekCheck(task, plan, names, check.breaches).check();
        check.block(plan);
        WishCheck.check(task, sessions, names, check.breaches);
        return List.copyOf(check.breaches);
    }

    private Exercise known(String slug) {
        Exercise exercise = known.get(slug);
        if (exercise == null) {
            throw new IllegalArgumentException(slug + " is not among the drills of this plan");
        }
        return exercise;
    }

    private void session(int s, List<Exercise> items) {
        Slot slot = task.slots().get(s);
        int minutes = items.stream().mapToInt(Exercise::minutes).sum();
        if (minutes > slot.minutes()) {
            add("C01", slot, minutes + " of " + slot.minutes() + " min");
        }
        Set<String> skills = new HashSet<>();
        int begun = 0;
        for (Exercise item : items) {
            fits(slot, item);
            if (!skills.add(item.skill())) {
                add("C08", slot, "two sets of " + name(item.skill()));
            }
            History own = history(item.skill());
            begun += !item.check() && own.all.isEmpty() ? 1 : 0;
            if (item.check()) {
                check(s, slot, item, own);
            } else {
                ladder(s, slot, item, own);
            }
        }
        if (skills.size() > limits.foci()) {
            add("C06", slot, skills.size() + " skills, at most " + limits.foci());
        }
        if (begun > limits.newFociIn(slot.week())) {
            add("C07", slot, begun + " new skills, at most " + limits.newFociIn(slot.week()));
        }
        items.stream().filter(item -> !item.check()).forEach(item -> {
            History own = history(item.skill());
            own.all.add(s);
            own.contact += limits.isContact(item.rank()) ? 1 : 0;
            own.control += limits.isControl(item.rank()) ? 1 : 0;
            own.lighter += item.rank() < limits.contactRank() - 1 ? 1 : 0;
        });
    }

    private void fits(Slot slot, Exercise item) {
        if (item.rank() > slot.highest()) {
            add("C02", slot, name(item.slug()) + " is above the contact of the day");
        }
        if (item.rank() > limits.approvedRank()) {
            add("C20", slot, name(item.slug()) + " is above what has been approved");
        }
        if (item.equipment().stream().anyMatch(slot.without()::contains)) {
            add("C04", slot, name(item.slug()) + " wants equipment that is not there");
        }
        if (item.people() > slot.people()) {
            add("C05", slot, name(item.slug()) + " takes " + item.people() + " men, " + slot.people() + " are there");
        }
    }

    private void check(int s, Slot slot, Exercise item, History own) {
        if (slot.week() != task.lastWeek() || own.check >= 0) {
            add("C14", slot, name(item.slug()) + " comes once, in the last week");
        }
        own.check = s;
    }

    private void ladder(int s, Slot slot, Exercise item, History own) {
        Focus focus = focus(item.skill());
        boolean contact = limits.isContact(item.rank());
        if (!contact && !limits.isControl(item.rank())) {
            return;
        }
        if (contact ? own.control < limits.controlSets() : own.lighter < limits.lighterSetsOf(focus)) {
            add("C09", slot, name(item.slug()) + " comes before the lighter sets it needs");
        }
        int need = contact ? limits.firstSetsForContact() : limits.firstSets();
        focus.first().stream()
                .sorted()
                .filter(first -> history(first).all.size() < need)
                .forEach(first ->
                        add("C10", slot, name(item.slug()) + " comes before " + need + " sets of " + name(first)));
        if (contact && focus.safety()) {
            add("C15", slot, name(item.slug()) + " trains a matter of safety at full contact");
        }
        if (contact
                && task.foci().stream()
                        .filter(Focus::safety)
                        .map(f -> history(f.skill()).check)
                        .anyMatch(check -> check < 0 || check >= s)) {
            add("C18", slot, name(item.slug()) + " comes before the check of safety");
        }
    }

    private void block(List<List<Exercise>> plan) {
        for (Exercise drill : task.exercises()) {
            long sets = plan.stream().filter(session -> session.contains(drill)).count();
            if (!drill.check() && sets > drill.mostSets()) {
                add("C17", null, name(drill.slug()) + " comes " + sets + " times, at most " + drill.mostSets());
            }
        }
        for (Focus focus : task.foci()) {
            History own = history(focus.skill());
            String skill = focus.skill();
            if (own.all.size() < focus.fewest() || own.all.size() > focus.most()) {
                String text = own.all.size() + " sets of " + name(skill) + ", wanted " + focus.fewest() + " to "
                        + focus.most();
                breaches.add(new Breach(new Rule("C13", name(skill)), "", text, own.all.size() < focus.fewest()));
            }
            for (int s = 0; s + 2 < plan.size(); s++) {
                int sessions = (own.on(s) ? 1 : 0) + (own.on(s + 1) ? 1 : 0) + (own.on(s + 2) ? 1 : 0);
                if (sessions > limits.inThreeSessions()) {
                    add("C16", task.slots().get(s), name(skill) + " in " + sessions + " of three sessions");
                }
            }
            if (focus.gap() && own.check < 0) {
                breaches.add(new Breach(new Rule("C14", name(skill)), "", name(skill) + " is not checked", true));
            }
            if (own.check >= 0 && own.all.stream().anyMatch(s -> s >= own.check)) {
                add("C14", task.slots().get(own.check), name(skill) + " is trained on the day of its check or later");
            }
            if (focus.safety() && !plan.isEmpty() && !own.all.contains(0)) {
                breaches.add(new Breach(
                        Rule.of("C15"), task.slots().get(0).label(), name(skill) + " does not open it", true));
            }
        }
    }

    private String name(String slug) {
        return names.apply(slug);
    }

    private History history(String skill) {
        return histories.computeIfAbsent(skill, k -> new History());
    }

    private Focus focus(String skill) {
        return task.foci().stream()
                .filter(f -> f.skill().equals(skill))
                .findFirst()
                .orElseThrow();
    }

    private void add(String code, @Nullable Slot slot, String text) {
        breaches.add(new Breach(Rule.of(code), slot == null ? "" : slot.label(), text, false));
    }
}
