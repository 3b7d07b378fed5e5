package rushlight.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rushlight.evidence.Interval;
import rushlight.evidence.Verdict;
import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.PeerRate;
import rushlight.findings.Polarity;
import rushlight.findings.Primary;
import rushlight.knowledge.Taxonomy;
import rushlight.report.Bodies;
import rushlight.report.VerdictMarks;
import rushlight.web.Beside;

/** An assessment as a coach reads it: what he lacks, what he does well, what hangs on his duty, and which reps say so. */
final class AssessText {
    /** Stands under every answer that names a drill. */
    static final String CAUTION =
            "Before anybody trains: certified coaches, licensed medical staff and the local rules decide about"
                    + System.lineSeparator()
                    + "contact, heat and head impacts. Film shows what happened, not what is safe.";

    private final Taxonomy taxonomy;
    private final Depth depth;
    private final FindingText findings;

    /** Writes with the labels of the book. */
    AssessText(Taxonomy taxonomy, Depth depth) {
        this(taxonomy, depth, Map.of());
    }

    private AssessText(Taxonomy taxonomy, Depth depth, Map<String, PeerRate> peers) {
        this.taxonomy = taxonomy;
        this.depth = depth;
        this.findings = new FindingText(taxonomy, depth, peers);
    }

    String of(Assessment assessment) {
        return of(assessment, Beside.NOTHING);
    }

    /** The same with what people said and think of him. */
    String of(Assessment assessment, Beside beside) {
        return new AssessText(taxonomy, depth, beside.peers()).written(assessment, beside);
    }

    private String written(Assessment assessment, Beside beside) {
        Page page = new Page();
        head(page, assessment);
        List<Judged> inOrder =
                assessment.findings().stream().sorted(Judged.mostTellingFirst()).toList();
        section(
                page,
                "What he lacks",
                inOrder,
                one -> stands(one) && one.finding().polarity() == Polarity.GAP);
        section(
                page,
                "What he does well",
                inOrder,
                one -> stands(one) && one.finding().polarity() == Polarity.STRENGTH);
        section(page, "Worth knowing", inOrder, one -> stands(one) && isNote(one));
        dutySection(page, inOrder);
        conclusions(page, assessment);
        RoleText.write(page, assessment.roles(), depth);
        ProjectionText.write(page, beside.projections(), taxonomy);
        SpokenText.write(page, assessment, beside.spoken());
        if (depth == Depth.SHORT) {
            listed(page, "Still open", inOrder, Verdict.WATCH);
        } else {
            section(page, "Still open", inOrder, one -> one.verdict() == Verdict.WATCH && !dutyMatters(one));
        }
        listed(page, "Cleared", only(inOrder, Polarity.GAP), Verdict.CLEARED);
        listed(page, "Not a strength on this tape", only(inOrder, Polarity.STRENGTH), Verdict.CLEARED);
        if (depth == Depth.SHORT) {
            thin(page, inOrder);
        } else {
            listed(page, "Not enough tape", inOrder, Verdict.NOT_ENOUGH_TAPE);
        }
        return page.toString();
    }

    private void head(Page page, Assessment assessment) {
        Prospect who = assessment.prospect();
        String left = who.name();
        String right = Numbers.of(assessment.reps(), "rep") + ", " + Numbers.of(assessment.games(), "game");
        page.line(left + " ".repeat(Math.max(2, Page.WIDTH - left.length() - right.length())) + right);
        page.line("=".repeat(Page.WIDTH));
        String body = Bodies.of(who);
        if (!body.isEmpty()) {
            page.wrapped("", "", body);
        }
        assessment.primary().ifPresent(primary -> page.wrapped("", "", primary(primary)));
        if (assessment.twoMoves().size() == 2) {
            page.wrapped(
                    "",
                    "",
                    "Two moves: " + taxonomy.shown(assessment.twoMoves().get(0)) + " and "
                            + taxonomy.shown(assessment.twoMoves().get(1)) + ", neither clearly ahead.");
        }
        leftOut(page, assessment.leftOut());
        page.wrapped("", "", assessment.taggers());
    }

    private String primary(Primary primary) {
        Interval shown = primary.shown();
        return "Main rush: " + taxonomy.shown(primary.move()) + ", "
                + primary.rate().events() + " of "
                + primary.rate().opportunities() + " first moves (likely range "
                + Math.round(100 * shown.low()) + " to " + Math.round(100 * shown.high()) + " %).";
    }

    private static void leftOut(Page page, Assessment.LeftOut out) {
        List<String> parts = new ArrayList<>();
        if (out.lowConfidence() > 0) {
            parts.add(Numbers.of(out.lowConfidence(), "rep") + " read with low confidence");
        }
        if (out.drops() > 0) {
            parts.add(Numbers.of(out.drops(), "drop"));
        }
        if (!parts.isEmpty()) {
            page.line("Left out of the counts: " + String.join(", ", parts) + ".");
        }
    }

    private void section(Page page, String title, List<Judged> all, Predicate<Judged> which) {
        List<Judged> some = all.stream().filter(which).toList();
        if (some.isEmpty()) {
            return;
        }
        page.blank().line(title);
        some.forEach(one ->
                findings.write(page, one, one.verdict() != Verdict.WATCH || depth == Depth.FULL || dutyMatters(one)));
    }

    private void dutySection(Page page, List<Judged> all) {
        section(page, "Depends on what he was told", all, this::dutyMatters);
    }

    /** Whether an answer to the question of his duty could make the finding stand, or take it away. */
    private boolean dutyMatters(Judged one) {
        if (!FindingText.hangsOnDuty(one) || (stands(one) && one.finding().polarity() != Polarity.CONDITIONAL)) {
            return false;
        }
        return depth == Depth.FULL
                || stands(one)
                || one.conditional().stream().anyMatch(c -> FindingText.stands(c.verdict()));
    }

    private void conclusions(Page page, Assessment assessment) {
        List<Assessment.Conclusion> more = assessment.conclusions().stream()
                .filter(c -> assessment.finding(c.slug()).isEmpty())
                .toList();
        if (more.isEmpty()) {
            return;
        }
        page.blank().line("Taken together");
        for (Assessment.Conclusion c : more) {
            page.wrapped(
                    "  - ",
                    "    ",
                    taxonomy.shown(c.slug()) + ": " + c.sentence() + " (from " + labels(c.from()) + ")");
        }
    }

    private void listed(Page page, String title, List<Judged> all, Verdict verdict) {
        List<Judged> some = all.stream()
                .filter(one -> one.verdict() == verdict && !dutyMatters(one))
                .toList();
        if (some.isEmpty()) {
            return;
        }
        if (depth == Depth.FULL) {
            section(page, title, some, one -> true);
            return;
        }
        List<Judged> seen = some.stream()
                .filter(one -> one.outcome().rate().opportunities() > 0)
                .toList();
        String text = seen.stream()
                .map(one -> one.finding().shown() + " (" + one.outcome().rate().events() + " of "
                        + one.outcome().rate().opportunities() + ")")
                .collect(Collectors.joining(", "));
        int unseen = some.size() - seen.size();
        String rest =
                unseen == 0 ? "" : (seen.isEmpty() ? "" : "; ") + Numbers.of(unseen, "finding") + " without a chance";
        page.blank().wrapped(VerdictMarks.of(verdict) + " " + title + ": ", "    ", text + rest + ".");
    }

    private void thin(Page page, List<Judged> all) {
        List<Judged> some = all.stream()
                .filter(one -> one.verdict() == Verdict.NOT_ENOUGH_TAPE && !dutyMatters(one))
                .toList();
        long unseen = some.stream()
                .filter(one -> one.outcome().rate().opportunities() == 0)
                .count();
        if (!some.isEmpty()) {
            page.blank()
                    .line(VerdictMarks.of(Verdict.NOT_ENOUGH_TAPE) + " Not enough tape for "
                            + Numbers.of(some.size(), "finding") + ", " + unseen + " of them without a single chance.");
        }
    }

    private static List<Judged> only(List<Judged> all, Polarity polarity) {
        return all.stream().filter(one -> one.finding().polarity() == polarity).toList();
    }

    private String labels(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(", "));
    }

    private static boolean stands(Judged one) {
        return FindingText.stands(one.verdict());
    }

    private static boolean isNote(Judged one) {
        return one.finding().polarity() == Polarity.NOTE
                || (one.finding().polarity() == Polarity.CONDITIONAL && !FindingText.hangsOnDuty(one));
    }
}
