package rushlight.report.prospect;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import rushlight.figure.Table;
import rushlight.findings.Assessment;
import rushlight.knowledge.Taxonomy;
import rushlight.plan.Plan;
import rushlight.plan.PlanAnswer;
import rushlight.plan.RetestTarget;
import rushlight.plan.Work;

/** A plan as it stands in a report: who decides, the skills by weeks, and what film must show afterwards. */
final class PlanPart {
    private final Taxonomy taxonomy;
    private final Assessment assessment;

    /**
     * @param taxonomy names of what is worked on
     * @param assessment what the report says he lacks
     */
    PlanPart(Taxonomy taxonomy, Assessment assessment) {
        this.taxonomy = taxonomy;
        this.assessment = assessment;
    }

    ReportPage.Section of(Part part, Material.Planned planned) {
        PlanAnswer answer = planned.answer();
        if (answer instanceof PlanAnswer.Made made) {
            return of(part, made.plan(), planned.which());
        }
        List<String> why = answer instanceof PlanAnswer.Impossible no
                ? no.reasons().isEmpty() ? no.clash() : no.reasons()
                : ((PlanAnswer.Refused) answer).reasons();
        return ReportPage.Section.ofWords(
                part.slug(),
                part.title(),
                List.of("There is no plan. " + String.join(" ", why)
                        + (planned.which().isEmpty() ? "" : " " + planned.which())));
    }

    private ReportPage.Section of(Part part, Plan plan, String which) {
        List<Table> tables = new ArrayList<>(List.of(weeks(plan)));
        if (!plan.retest().isEmpty()) {
            tables.add(retest(plan));
        }
        return new ReportPage.Section(
                part.slug(),
                part.title(),
                List.of(plan.decides(), which.isEmpty() ? frame(plan) : which + " " + frame(plan)),
                List.of(),
                tables,
                List.of(),
                leftOut(plan));
    }

    /** The gaps that the report names and the plan does not work on, each with the reason; empty where there is none. */
    private Optional<String> leftOut(Plan plan) {
        List<String> left = plan.work().left().stream()
                .filter(one ->
                        assessment.finding(one.finding()).filter(Sorts::isGap).isPresent())
                .map(one -> one.label() + ": " + firstSentence(one.why()))
                .toList();
        return left.isEmpty() ? Optional.empty() : Optional.of("Left out of these weeks: " + String.join(" ", left));
    }

    /** The reason alone: what film counts of the gap stands in the report already. */
    private static String firstSentence(String why) {
        BreakIterator sentences = BreakIterator.getSentenceInstance(Locale.ENGLISH);
        sentences.setText(why);
        return why.substring(0, Math.max(0, sentences.next())).strip();
    }

    /** "Four weeks in season, 16 sessions; no rulebook named, highest contact bags, no full contact." */
    private static String frame(Plan plan) {
        Plan.Frame frame = plan.frame();
        int sessions =
                plan.weeks().stream().mapToInt(week -> week.sessions().size()).sum();
        int contact = plan.blocks().mapToInt(Plan.Block::contactMinutes).sum();
        return Entries.capital(frame.label()) + ", " + sessions + " sessions; " + frame.profile() + ", highest contact "
                + frame.approved() + ", "
                + (contact == 0 ? "no full contact" : contact + " min of full contact in all")
                + ". None of it is done before those who decide have approved it.";
    }

    private Table weeks(Plan plan) {
        List<String> heads = new ArrayList<>(List.of("Skill, in teaching order", "For"));
        plan.weeks().forEach(week -> heads.add("Week " + week.week()));
        List<List<String>> rows = new ArrayList<>();
        for (Work.Target target : plan.work().targets()) {
            List<String> row = new ArrayList<>(List.of(target.label(), why(target)));
            plan.weeks().forEach(week -> row.add(minutes(week, target.skill())));
            rows.add(row);
        }
        return new Table("Minutes a week, after the warm-up", heads, rows);
    }

    private String why(Work.Target target) {
        if (target.role() != Work.Role.PREREQUISITE) {
            return target.findings().stream().map(taxonomy::shown).collect(Collectors.joining(", "));
        }
        return target.because().stream().limit(1).collect(Collectors.joining());
    }

    private static String minutes(Plan.Week week, String skill) {
        int minutes = week.sessions().stream()
                .flatMap(session -> session.blocks().stream())
                .filter(block -> block.skill().equals(skill))
                .mapToInt(Plan.Block::minutes)
                .sum();
        return minutes == 0 ? "\u2013" : Integer.toString(minutes);
    }

    private Table retest(Plan plan) {
        return new Table(
                "What the next games must show",
                List.of("Finding", "Now", "In the next", "Would clear it", "Would show him improving"),
                plan.retest().stream().map(this::retest).toList());
    }

    private List<String> retest(RetestTarget one) {
        String luck = one.improves().isPresent() && one.luck().isPresent()
                ? " (by luck alone " + Math.round(100 * one.luck().getAsDouble()) + " in 100)"
                : "";
        return List.of(
                taxonomy.shown(one.finding()),
                one.now().events() + " of " + one.now().opportunities(),
                one.opportunities() + " chances",
                count(one, one.clears()),
                count(one, one.improves()) + luck);
    }

    private static String count(RetestTarget one, OptionalInt events) {
        return events.isEmpty() ? "no count" : one.count(events.getAsInt());
    }
}
