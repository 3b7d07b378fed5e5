package rushlight.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
    /** The part of the work after which only the question is left what clashes; a guess. */
    private static final double SEARCHED = 0.7;

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

    /** Is told what the search does, for it may take seconds. */
    public interface Watcher {
        /**
         * What it does now.
         *
         * @param step in words
         * @param done a guess of how much is done, from 0 to 1
         */
        void tell(String step, double done);
    }

    /** What a request comes to before anything is searched for. */
    private record Start(
            Assessment assessment,
            PlanRequest request,
            PlanPreset preset,
            RulesInForce rules,
            List<PlanDays.Day> days,
            Tasking tasking) {}

    /** A plan for one man, or why there is none. */
    public PlanAnswer plan(Assessment assessment, PlanRequest request) {
        return plan(assessment, request, (step, done) -> {});
    }

    /** The same, watched. */
    public PlanAnswer plan(Assessment assessment, PlanRequest request, Watcher watcher) {
        List<String> refused = new ArrayList<>();
        Optional<Start> start = start(assessment, request, refused);
        return start.isPresent() ? plan(start.get(), watcher) : new PlanAnswer.Refused(refused);
    }

    /**
     * Holds sessions that a person changed against everything a plan keeps to; quick, for nothing is searched for.
     *
     * @param skills slugs of the skills that the plan works on
     * @param sessions slugs of drills and checks for each session
     * @param bound no schedule of this request is worth more; empty where that is not known
     */
    public PlanByHand byHand(
            Assessment assessment,
            PlanRequest request,
            List<String> skills,
            List<List<String>> sessions,
            OptionalInt bound) {
        List<String> refused = new ArrayList<>();
        Optional<Start> start = start(assessment, request, refused);
        if (start.isEmpty()) {
            return new PlanByHand.Refused(refused);
        }
        Start one = start.get();
        return new ByHand(taxonomy, one.tasking())
                .held(skills, sessions, bound, (work, task, found) -> assembled(one, work, task, found));
    }

    private Optional<Start> start(Assessment assessment, PlanRequest request, List<String> refused) {
        String named = request.time().preset().orElse(PRESET + "in-season");
        Optional<PlanPreset> preset = training.preset(named).or(() -> training.preset(PRESET + named));
        if (preset.isEmpty()) {
            refused.add("There are no weeks called \"" + named + "\". There are: "
                    + training.presets().stream().map(PlanPreset::slug).collect(Collectors.joining(", ")) + ".");
            return Optional.empty();
        }
        Optional<LocalDate> first = request.time().start();
        RulesInForce rules =
                new RulesInForce(training, request.rules(), preset.get().seasonPart(), first);
        PlanDays days = new PlanDays(training, request, preset.get(), rules, contactRank);
        refused.addAll(rules.refused());
        refused.addAll(days.refused());
        refused.addAll(unknown(assessment, request));
        if (!refused.isEmpty()) {
            return Optional.empty();
        }
        List<PlanDays.Day> all = days.days();
        return Optional.of(new Start(
                assessment,
                request,
                preset.get(),
                rules,
                all,
                new Tasking(training, taxonomy, assessment, request, rules, all, contactRank)));
    }

    private PlanAnswer plan(Start start, Watcher watcher) {
        Tasking tasking = start.tasking();
        watcher.tell("Choosing what to work on", 0);
        int room = tasking.room();
        Work work = tasking.work(room);
        if (work.targets().isEmpty()) {
            return new PlanAnswer.Impossible(work, List.of(Clashing.nothing()), List.of(), List.of());
        }
        PlanTask task = tasking.task(work);
        double all = Math.max(1, work.targets().size());
        watcher.tell(searching(work), 0.05);
        Schedule schedule = scheduler.find(task);
        int least = Math.max(1, start.request().wants().workOn().size());
        while (!(schedule instanceof Schedule.Found) && work.targets().size() > least) {
            room = work.targets().size() - 1;
            work = tasking.work(room);
            task = tasking.task(work);
            watcher.tell(searching(work), SEARCHED * (1 - work.targets().size() / all));
            schedule = scheduler.find(task);
        }
        if (schedule instanceof Schedule.Found found) {
            return new PlanAnswer.Made(assembled(start, work, task, found));
        }
        watcher.tell("No weeks keep all of it. Looking for what clashes", SEARCHED);
        return Clashing.told(taxonomy, work, scheduler.solve(task));
    }

    private static String searching(Work work) {
        int skills = work.targets().size();
        return "Looking for the best weeks for " + skills + (skills == 1 ? " skill" : " skills");
    }

    private Plan assembled(Start start, Work work, PlanTask task, Schedule.Found found) {
        return new Assembling(training, taxonomy, lessons)
                .plan(
                        start.assessment(),
                        start.request(),
                        start.preset(),
                        start.rules(),
                        start.days(),
                        work,
                        task,
                        found);
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
        request.wants().fixed().stream()
                .flatMap(wish -> PlanTask.named(wish).stream())
                .filter(slug -> training.drill(slug).isEmpty() && !isCheck(slug))
                .distinct()
                .forEach(slug -> unknown.add("The book has no drill \"" + slug + "\" to give a session to."));
        Set<String> both = new HashSet<>(request.wants().workOn());
        both.retainAll(request.wants().leaveOut());
        both.stream().sorted().forEach(slug -> unknown.add("\"" + slug + "\" is asked for and left out."));
        return unknown;
    }

    private boolean isCheck(String slug) {
        return slug.startsWith(DrillPool.CHECK)
                && training.skill(slug.substring(DrillPool.CHECK.length())).isPresent();
    }
}
