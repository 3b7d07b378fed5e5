package rushlight.web;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import rushlight.film.Prospect;
import rushlight.knowledge.Drill;
import rushlight.knowledge.PlanNotice;
import rushlight.plan.Plan;
import rushlight.plan.PlanAnswer;
import rushlight.plan.Schedule;
import rushlight.plan.Work;
import rushlight.store.KeptPlans;

/**
 * A plan as programs read it, or why there is none. Slugs, not labels, are the keys.
 *
 * @param prospect his name
 * @param id his id
 * @param decides who decides about all of it; never missing
 * @param frame the weeks and the numbers they keep to; null where there is no plan
 * @param proof what is proven of it; null where there is no plan
 * @param workOn what is worked on, in teaching order
 * @param look what is looked at before heavier work
 * @param weeks the weeks; empty where there is no plan
 * @param retest what film must show afterwards
 * @param cautions what stands on the plan, then what can hurt in its drills
 * @param left what is left out, and why
 * @param none why there is no plan; null where there is one
 */
public record PlanSheet(
        String prospect,
        String id,
        String decides,
        Optional<Frame> frame,
        Optional<Proof> proof,
        List<Target> workOn,
        List<Look> look,
        List<PlanWeek> weeks,
        List<Retest> retest,
        List<Caution> cautions,
        List<Left> left,
        Optional<None> none) {
    public PlanSheet {
        workOn = List.copyOf(workOn);
        weeks = List.copyOf(weeks);
    }

    /** The weeks and the numbers they keep to. */
    public record Frame(
            String preset,
            String label,
            String season,
            String profile,
            String approved,
            Optional<String> start,
            List<Limit> limits,
            List<String> notes) {}

    /** A number the plan keeps to; {@code bound} is {@code most} or {@code least}. */
    public record Limit(
            String kind, String what, String bound, double amount, String unit, String from, String source) {}

    /** What is proven: no plan is worth more than {@code bound}. */
    public record Proof(int value, int bound, boolean best, boolean proven, int betterAtMostPercent, String words) {}

    /** A skill to be worked on; {@code role} is {@code safety}, {@code gap} or {@code prerequisite}. */
    public record Target(
            String skill,
            String label,
            String role,
            int weight,
            List<String> findings,
            List<String> first,
            List<String> because) {
        public Target {
            Objects.requireNonNull(skill);
        }
    }

    /** A skill to be looked at. */
    public record Look(String skill, String label, String why) {}

    /** What film must show. */
    public record Retest(
            String finding, Count now, OptionalInt target, int opportunities, boolean atMost, String sentence) {}

    /** Events in opportunities. */
    public record Count(int events, int opportunities) {}

    /** What stands on the plan; {@code part} is {@code decides}, {@code approval}, {@code rule}, {@code stop} or {@code drill}. */
    public record Caution(String code, String part, String text) {}

    /** What film showed and the plan leaves out. */
    public record Left(String finding, String label, String why) {}

    /** Why there is no plan: what was refused, or what clashes and the least that would have to give. */
    public record None(List<String> reasons, List<String> clash, List<String> giveUp) {}

    /**
     * The sheet of a plan that was kept.
     *
     * @throws IllegalArgumentException where another edition of the program wrote it
     */
    public static PlanSheet of(KeptPlans.Kept kept) {
        return Json.read(kept.sheet().getBytes(StandardCharsets.UTF_8), PlanSheet.class);
    }

    /** What came of a request for one man. */
    public static PlanSheet of(Prospect prospect, PlanAnswer answer, List<PlanNotice> notices) {
        if (answer instanceof PlanAnswer.Made made) {
            return of(made.plan());
        }
        if (answer instanceof PlanAnswer.Impossible no) {
            return without(prospect, notices, Optional.of(no.work()), new None(no.reasons(), no.clash(), no.giveUp()));
        }
        PlanAnswer.Refused no = (PlanAnswer.Refused) answer;
        return without(prospect, notices, Optional.empty(), new None(no.reasons(), List.of(), List.of()));
    }

    private static PlanSheet without(Prospect prospect, List<PlanNotice> notices, Optional<Work> work, None none) {
        return new PlanSheet(
                prospect.name(),
                prospect.id(),
                notices.get(0).text(),
                Optional.empty(),
                Optional.empty(),
                work.map(PlanSheet::targets).orElse(List.of()),
                work.map(PlanSheet::looks).orElse(List.of()),
                List.of(),
                List.of(),
                notices.stream().map(PlanSheet::notice).toList(),
                work.map(PlanSheet::left).orElse(List.of()),
                Optional.of(none));
    }

    /** A plan. */
    public static PlanSheet of(Plan plan) {
        Plan.Frame frame = plan.frame();
        Schedule.Found found = plan.result();
        return new PlanSheet(
                plan.prospect().name(),
                plan.prospect().id(),
                plan.decides(),
                Optional.of(new Frame(
                        frame.preset(),
                        frame.label(),
                        frame.season(),
                        frame.profile(),
                        frame.approved(),
                        plan.request().time().start().map(Object::toString),
                        frame.held().stream()
                                .map(h -> new Limit(
                                        h.kind(),
                                        h.what(),
                                        h.atMost() ? "most" : "least",
                                        h.amount(),
                                        h.unit(),
                                        h.from(),
                                        h.source()))
                                .toList(),
                        frame.notes())),
                Optional.of(new Proof(
                        found.value(),
                        found.bound(),
                        found.proof() == Schedule.Proof.BEST,
                        found.proof() != Schedule.Proof.NOT_PROVEN,
                        found.betterAtMost(),
                        found.words())),
                targets(plan.work()),
                looks(plan.work()),
                plan.weeks().stream().map(PlanWeek::of).toList(),
                plan.retest().stream()
                        .map(r -> new Retest(
                                r.finding(),
                                new Count(r.now().events(), r.now().opportunities()),
                                r.target(),
                                r.opportunities(),
                                r.atMost(),
                                r.sentence()))
                        .toList(),
                cautions(plan),
                left(plan.work()),
                Optional.empty());
    }

    private static List<Caution> cautions(Plan plan) {
        Stream<Caution> drills = plan.blocks()
                .flatMap(b -> b.cautions().stream())
                .map(h -> new Caution(h.slug(), "drill", named(h)))
                .distinct()
                .sorted((a, b) -> a.code().compareTo(b.code()));
        return Stream.concat(plan.notices().stream().map(PlanSheet::notice), drills)
                .toList();
    }

    /** What can hurt is named first: what is said of the passer begins with "the passer". */
    private static String named(Drill.Hazard hazard) {
        return hazard.label().substring(0, 1).toUpperCase(Locale.ROOT)
                + hazard.label().substring(1) + ". " + hazard.text();
    }

    private static Caution notice(PlanNotice notice) {
        return new Caution(notice.slug(), notice.part().slug(), notice.text());
    }

    private static List<Target> targets(Work work) {
        return work.targets().stream()
                .map(t -> new Target(
                        t.skill(), t.label(), t.role().slug(), t.weight(), t.findings(), t.first(), t.because()))
                .toList();
    }

    private static List<Look> looks(Work work) {
        return work.look().stream()
                .map(l -> new Look(l.skill(), l.label(), l.why()))
                .toList();
    }

    private static List<Left> left(Work work) {
        return work.left().stream()
                .map(l -> new Left(l.finding(), l.label(), l.why()))
                .toList();
    }
}
