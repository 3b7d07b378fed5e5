package rushlight.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.findings.Assessment;
import rushlight.knowledge.ContactLevel;
import rushlight.knowledge.Lessons;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.PlanPreset;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.Training;

/** Turns what film shows of a man and what a coach asks for into weeks of practice. The same input gives the same plan. */
public final class Planner {
    private static final String PRESET = "preset-";

    private final Training training;
    private final Taxonomy taxonomy;
    private final Lessons lessons;
    private final Scheduler scheduler;
    private final int contactRank;

    private Planner(Training training, Taxonomy taxonomy, Lessons lessons, Scheduler scheduler) {
        this.training = training;
        this.taxonomy = taxonomy;
        this.lessons = lessons;
        this.scheduler = scheduler;
        this.contactRank = training.levels().stream()
                .filter(ContactLevel::fullContact)
                .mapToInt(ContactLevel::rank)
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    /** By this book, with the best search there is on this machine. */
    public static Planner of(Ontology ontology, Training training, Taxonomy taxonomy) {
        return new Planner(training, taxonomy, Lessons.of(ontology), Scheduler.best());
    }

    /** Loads the solver's library, so that it is there when a plan is asked for; worth a thread of its own. */
    public static void prepare() {
        Scheduler.best();
    }

    /** What the book knows of training. */
    public Training training() {
        return training;
    }

    /** A plan for one man, or why there is none. */
    public PlanAnswer plan(Assessment assessment, PlanRequest request) {
        String named = request.time().preset().orElse(PRESET + "in-season");
        Optional<PlanPreset> preset = training.preset(named).or(() -> training.preset(PRESET + named));
        if (preset.isEmpty()) {
            return new PlanAnswer.Refused(List.of("There are no weeks called \"" + named + "\". There are: "
                    + training.presets().stream().map(PlanPreset::slug).collect(Collectors.joining(", ")) + "."));
        }
        Optional<LocalDate> start = request.time().start();
        RulesInForce rules =
                new RulesInForce(training, request.rules(), preset.get().seasonPart(), start);
        PlanDays days = new PlanDays(training, request, preset.get(), rules, contactRank);
        List<String> refused = new ArrayList<>(rules.refused());
        refused.addAll(days.refused());
        refused.addAll(unknown(assessment, request));
        return refused.isEmpty()
                ? plan(assessment, request, preset.get(), rules, days.days())
                : new PlanAnswer.Refused(refused);
    }

    private PlanAnswer plan(
            Assessment assessment,
            PlanRequest request,
            PlanPreset preset,
            RulesInForce rules,
            List<PlanDays.Day> days) {
        Tasking tasking = new Tasking(training, taxonomy, assessment, request, rules, days, contactRank);
        int room = tasking.room();
        Work work = tasking.work(room);
        if (work.targets().isEmpty()) {
            return new PlanAnswer.Impossible(work, List.of(Clashing.nothing()), List.of(), List.of());
        }
        PlanTask task = tasking.task(work);
        Schedule schedule = scheduler.find(task);
        int least = Math.max(1, request.wants().workOn().size());
        while (!(schedule instanceof Schedule.Found) && work.targets().size() > least) {
            room = work.targets().size() - 1;
            work = tasking.work(room);
            task = tasking.task(work);
            schedule = scheduler.find(task);
        }
        if (schedule instanceof Schedule.Found found) {
            return new PlanAnswer.Made(new Assembling(training, taxonomy, lessons)
                    .plan(assessment, request, preset, rules, days, work, task, found));
        }
        return Clashing.told(taxonomy, work, scheduler.solve(task));
    }

    /** What is asked for that nobody knows. */
    private List<String> unknown(Assessment assessment, PlanRequest request) {
        List<String> unknown = new ArrayList<>();
        request.rules().approved().ifPresent(level -> {
            if (training.level(level).filter(ContactLevel::planned).isEmpty()) {
                unknown.add("A plan has no contact \"" + level + "\". It may have: "
                        + training.levels().stream()
                                .filter(ContactLevel::planned)
                                .map(ContactLevel::slug)
                                .collect(Collectors.joining(", "))
                        + ".");
            }
        });
        List<String> named = new ArrayList<>(request.wants().workOn());
        named.addAll(request.wants().leaveOut());
        named.addAll(request.wants().has());
        for (String slug : named) {
            if (assessment.finding(slug).isEmpty() && training.skill(slug).isEmpty()) {
                unknown.add("\"" + slug + "\" is neither a finding nor a skill that drills are chosen for.");
            }
        }
        for (String slug : request.wants().workOn()) {
            assessment
                    .finding(slug)
                    .filter(f -> f.finding().advice().trainFirst().isEmpty())
                    .ifPresent(f -> unknown.add("For \"" + f.finding().shown() + "\" there is nothing to train."));
        }
        Set<String> both = new HashSet<>(request.wants().workOn());
        both.retainAll(request.wants().leaveOut());
        both.stream().sorted().forEach(slug -> unknown.add("\"" + slug + "\" is asked for and left out."));
        return unknown;
    }
}
