package rushlight.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rushlight.findings.Assessment;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.Training;

/** Turns sessions, rules and what is to be worked on into a task for the scheduler. */
final class Tasking {
    /** The weeks that the doses of the house are meant for. */
    private static final double USUAL_WEEKS = 4;
    /** The part of what the sessions hold that may be taken up by begun skills: the rest is for keeping up and for checks. */
    private static final double FILLED = 0.75;

    private static final int A_SET = 5;

    private final Training training;
    private final Taxonomy taxonomy;
    private final Assessment assessment;
    private final PlanRequest request;
    private final RulesInForce rules;
    private final List<Slot> slots;
    private final int weeks;
    private final int contactRank;
    private final int ownContact;
    private final DrillPool pool;

    Tasking(
            Training training,
            Taxonomy taxonomy,
            Assessment assessment,
            PlanRequest request,
            RulesInForce rules,
            List<PlanDays.Day> days,
            int contactRank) {
        this.training = training;
        this.taxonomy = taxonomy;
        this.assessment = assessment;
        this.request = request;
        this.rules = rules;
        this.slots = days.stream().map(PlanDays.Day::slot).toList();
        this.weeks = slots.isEmpty() ? 0 : slots.get(slots.size() - 1).week();
        this.contactRank = contactRank;
        this.ownContact = rules.ownContact(request.time().start());
        this.pool = new DrillPool(training, slots, heaviest(true), contactRank - 2);
    }

    private int heaviest(boolean contact) {
        int approved = rules.approvedRank(contactRank);
        return ownContact > 0 && contact ? approved : Math.min(approved, contactRank - 1);
    }

    /** Skills that fit: what a week holds, less what keeping them up and checking them takes. */
    int room() {
        int foci = foci();
        int sets = slots.stream()
                .filter(slot -> slot.week() == 1)
                .mapToInt(slot -> Math.min(foci, slot.minutes() / A_SET))
                .sum();
        return Math.max(1, (int) Math.floor(FILLED * sets));
    }

    Work work(int room) {
        int opening = Math.min(foci(), newFoci() + 1);
        return new WorkChooser(training, taxonomy, assessment, request.wants(), room, opening, pool::lacks).choose();
    }

    PlanTask task(Work work) {
        boolean contact = work.contactBlocked().isEmpty();
        List<Focus> foci = new ArrayList<>();
        List<Exercise> exercises = new ArrayList<>();
        for (Work.Target target : work.targets()) {
            boolean gap = target.role() != Work.Role.PREREQUISITE;
            boolean safety = target.role() == Work.Role.SAFETY;
            boolean checked = gap && pool.check(target.skill()).isPresent();
            int most = scaled(rules.number(gap ? "sets-of-a-gap-most" : "sets-of-a-prerequisite-most", 6), true);
            int fewest = scaled(rules.number(gap ? "sets-of-a-gap-least" : "sets-of-a-prerequisite-least", 3), false);
            foci.add(new Focus(
                    target.skill(),
                    target.weight(),
                    Set.copyOf(target.first()),
                    Math.min(fewest, most),
                    most,
                    checked,
                    safety));
            pool.exercises(target.skill(), scaled(rules.number("sets-of-a-drill", 3), true), most, checked).stream()
                    .filter(e -> contact || e.rank() < contactRank)
                    .forEach(exercises::add);
        }
        List<String> known = exercises.stream().map(Exercise::slug).toList();
        List<Wish> wishes = request.wants().fixed().stream()
                .filter(wish -> known.containsAll(PlanTask.named(wish)))
                .toList();
        return new PlanTask(slots, foci, exercises, limits(contact), wishes);
    }

    private int scaled(int sets, boolean more) {
        double scale = weeks / USUAL_WEEKS;
        return scale < 1 || more ? Math.max(1, (int) Math.round(sets * scale)) : sets;
    }

    private int foci() {
        return rules.number("skills-a-session", 3);
    }

    private int newFoci() {
        return rules.number("new-skills-a-session", 1);
    }

    private PlanLimits limits(boolean contact) {
        int week = rules.number(RulesInForce.CONTACT_A_WEEK, Integer.MAX_VALUE);
        int day = Math.min(
                rules.number(RulesInForce.CONTACT_A_DAY, week),
                rules.number(RulesInForce.CONTACT_A_PRACTICE, Integer.MAX_VALUE));
        int lighter = rules.number("lighter-sets-before-control", 1);
        int days = Math.min(Math.min(6, rules.number("sport-days-a-week", 6)), 7 - rules.number("rest-days-a-week", 1));
        int minutes = slots.stream().mapToInt(Slot::minutes).sum();
        return new PlanLimits(
                contactRank,
                heaviest(contact),
                day,
                week,
                ownContact,
                foci(),
                List.of(newFoci() + 1, newFoci()),
                rules.number("sessions-of-a-skill-a-week", 3),
                rules.number("sessions-of-a-skill-in-three", 2),
                lighter,
                lighter + 1,
                rules.number("control-sets-before-thud", 2),
                rules.number("ancestor-sets-before-control", 2),
                rules.number("ancestor-sets-before-thud", 3),
                days,
                Math.min(minutes, rules.number("minutes-a-week", Integer.MAX_VALUE)));
    }

    /** Drills that were given a session by hand in vain, because the plan trains nothing they are for. */
    static List<String> pinnedElsewhere(PlanRequest request, PlanTask task) {
        return request.wants().fixed().stream()
                .filter(Wish.Pin.class::isInstance)
                .filter(wish -> !task.wishes().contains(wish))
                .flatMap(wish -> PlanTask.named(wish).stream())
                .distinct()
                .toList();
    }

    /** Skills of a plan whose check no session allows, so that film alone can judge them. */
    static List<Focus> unchecked(PlanTask task, Work work) {
        return task.foci().stream()
                .filter(f -> !f.gap())
                .filter(f -> work.target(f.skill())
                        .filter(t -> t.role() != Work.Role.PREREQUISITE)
                        .isPresent())
                .toList();
    }
}
