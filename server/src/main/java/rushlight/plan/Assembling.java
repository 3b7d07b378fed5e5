package rushlight.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rushlight.findings.Assessment;
import rushlight.knowledge.ContactLevel;
import rushlight.knowledge.Drill;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Lessons;
import rushlight.knowledge.PlanPreset;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TrainedSkill;
import rushlight.knowledge.Training;

/** Puts a schedule into the weeks a coach reads: what comes first in a session, how each drill is run, and why it is there. */
final class Assembling {
    private static final String POINTS = "coachingPoint";
    private static final String SPRINT = "hazard-sprint";
    /** Games until he is looked at again where the block has none. */
    private static final int GAMES_AFTER = 4;

    private final Training training;
    private final Taxonomy taxonomy;
    private final Lessons lessons;

    Assembling(Training training, Taxonomy taxonomy, Lessons lessons) {
        this.training = training;
        this.taxonomy = taxonomy;
        this.lessons = lessons;
    }

    Plan plan(
            Assessment assessment,
            PlanRequest request,
            PlanPreset preset,
            RulesInForce rules,
            List<PlanDays.Day> days,
            Work work,
            PlanTask task,
            Schedule.Found found) {
        List<String> notes = new ArrayList<>(rules.notes());
        work.contactBlocked().ifPresent(why -> notes.add("No full contact in this plan: " + why + "."));
        for (Focus focus : Tasking.unchecked(task, work)) {
            notes.add("No session allows the contact at which \"" + taxonomy.label(focus.skill())
                    + "\" can be judged: film of the next games judges it.");
        }
        for (String drill : Tasking.pinnedElsewhere(request, task)) {
            notes.add("\"" + taxonomy.label(drill) + "\" was given a day by hand, but no skill of this plan is trained"
                    + " by it: ask for its skill, too.");
        }
        if (!preset.note().isEmpty()) {
            notes.add(preset.note());
        }
        notes.add("These minutes come after 10 to 15 minutes of warm-up, before every session.");
        int approved = task.limits().approvedRank();
        Plan.Frame frame = new Plan.Frame(
                preset.slug(),
                preset.label(),
                preset.seasonPart(),
                rules.profile().label(),
                training.levels().stream()
                        .filter(level -> level.rank() <= approved && level.planned())
                        .reduce((a, b) -> b)
                        .map(ContactLevel::label)
                        .orElse("none"),
                rules.used(),
                notes);
        return new Plan(
                assessment.prospect(),
                request,
                frame,
                work,
                weeks(days, work, task, found.sessions()),
                found,
                task,
                retest(assessment, work, preset, days),
                training.notices());
    }

    /** The weeks of a schedule: sessions of slugs in the order of the task. */
    List<Plan.Week> weeks(List<PlanDays.Day> days, Work work, PlanTask task, List<List<String>> sessions) {
        Map<String, Exercise> known = task.bySlug();
        DrillPool pool = new DrillPool(
                training,
                task.slots(),
                task.limits().approvedRank(),
                task.limits().contactRank() - 2);
        Map<Integer, List<Plan.Session>> weeks = new TreeMap<>();
        Set<String> begun = new HashSet<>();
        for (int s = 0; s < sessions.size(); s++) {
            PlanDays.Day day = days.get(s);
            List<Plan.Block> blocks = new ArrayList<>();
            for (String slug : sessions.get(s)) {
                Exercise exercise = known.get(slug);
                if (exercise != null) {
                    blocks.add(block(exercise, work, pool));
                }
            }
            Set<String> before = Set.copyOf(begun);
            blocks.sort(Comparator.<Plan.Block>comparingInt(b -> place(b, before, work))
                    .thenComparing(
                            Plan.Block::level,
                            Comparator.comparingInt(ContactLevel::rank).reversed())
                    .thenComparing(Plan.Block::exercise));
            blocks.stream().filter(b -> !b.check()).forEach(b -> begun.add(b.skill()));
            weeks.computeIfAbsent(day.slot().week(), w -> new ArrayList<>())
                    .add(new Plan.Session(s, day.day(), day.date(), day.slot(), day.because(), blocks));
        }
        return weeks.entrySet().stream()
                .map(week -> new Plan.Week(week.getKey(), week.getValue()))
                .toList();
    }

    /** Checks first, then sprints, then what is new, then what is done against a man; cards and film last. */
    private int place(Plan.Block block, Set<String> begun, Work work) {
        boolean sprint = block.drill().hazards().stream().anyMatch(h -> h.slug().equals(SPRINT));
        boolean eyes = block.level().rank() == 0
                && training.skill(block.skill())
                        .map(TrainedSkill::kind)
                        .filter("perceptual"::equals)
                        .isPresent();
        if (block.check()) {
            return 0;
        }
        if (sprint) {
            return 1;
        }
        if (work.target(block.skill()).filter(t -> t.role() == Work.Role.SAFETY).isPresent()) {
            return 2;
        }
        return eyes ? 5 : begun.contains(block.skill()) ? 4 : 3;
    }

    private Plan.Block block(Exercise exercise, Work work, DrillPool pool) {
        Work.Target target = work.target(exercise.skill()).orElseThrow();
        Drill drill = exercise.check()
                ? pool.check(exercise.skill()).orElseThrow()
                : training.drill(exercise.slug()).orElseThrow();
        String why = exercise.check()
                ? "shows where it stands before film does"
                : switch (target.role()) {
                    case SAFETY -> "safety";
                    case GAP ->
                        target.findings().isEmpty()
                                ? "asked for by hand"
                                : "against \""
                                        + taxonomy.shown(target.findings().get(0)) + "\"";
                    case PREREQUISITE ->
                        "comes before "
                                + String.join(
                                        ", ",
                                        work.targets().stream()
                                                .filter(t -> t.first().contains(target.skill()))
                                                .map(Work.Target::label)
                                                .limit(2)
                                                .toList());
                };
        return new Plan.Block(
                exercise.slug(),
                drill,
                exercise.check(),
                target.skill(),
                target.label(),
                drill.level(),
                exercise.minutes(),
                drill.level().fullContact() && !exercise.check() ? exercise.minutes() : 0,
                drill.repetitions(),
                drill.success(),
                lessons.about(drill.slug(), POINTS).stream()
                        .map(Lesson.Statement::text)
                        .toList(),
                target.findings(),
                why);
    }

    private static List<RetestTarget> retest(
            Assessment assessment, Work work, PlanPreset preset, List<PlanDays.Day> days) {
        int weeks = days.isEmpty() ? 0 : days.get(days.size() - 1).slot().week();
        int ahead = preset.seasonPart().equals("in-season") ? Math.max(1, weeks) : GAMES_AFTER;
        return work.targets().stream()
                .filter(t -> t.role() != Work.Role.PREREQUISITE)
                .flatMap(t -> t.findings().stream())
                .distinct()
                .flatMap(slug -> assessment.finding(slug).stream())
                .map(gap -> RetestTarget.of(gap, Math.max(1, assessment.games()), ahead))
                .toList();
    }
}
