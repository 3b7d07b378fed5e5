package rushlight.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rushlight.evidence.BenjaminiHochberg;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.SideBySide;
import rushlight.knowledge.Taxonomy;
import rushlight.report.VerdictMarks;
import rushlight.web.CompareAnswer;

/** Prospects side by side as a coach reads them: what tells them apart, what leans, what nobody can tell. */
final class CompareText {
    private final Taxonomy taxonomy;
    private final boolean all;

    CompareText(Taxonomy taxonomy, boolean all) {
        this.taxonomy = taxonomy;
        this.all = all;
    }

    String of(List<CompareAnswer.Side> sides, SideBySide beside) {
        Page page = new Page();
        page.wrapped("", "", String.join(", ", beside.names()) + ", side by side");
        page.line("=".repeat(Page.WIDTH));
        sides.forEach(side -> page.wrapped("", "  ", who(side.assessment())));
        section(page, "The tape tells them apart", beside, SideBySide.Standing.APART, true);
        section(page, "Leaning; it may be luck", beside, SideBySide.Standing.LEANING, true);
        section(page, "The tape cannot tell them apart", beside, SideBySide.Standing.NOT_TOLD_APART, all);
        section(page, "Not enough tape to compare", beside, SideBySide.Standing.NOT_ENOUGH_TAPE, all);
        uncompared(page, beside);
        page.blank().wrapped("", "", honest(beside));
        return page.toString();
    }

    private String who(Assessment one) {
        String main = one.primary()
                .map(primary -> "main rush " + taxonomy.shown(primary.move()))
                .orElse("no main rush");
        return one.prospect().name() + ": " + Numbers.of(one.reps(), "rep") + ", " + Numbers.of(one.games(), "game")
                + ", " + main + ".";
    }

    private void section(Page page, String title, SideBySide beside, SideBySide.Standing standing, boolean inFull) {
        List<SideBySide.Row> rows = beside.rows().stream()
                .filter(row -> row.standing() == standing && !row.gaps().isEmpty())
                .sorted(Comparator.comparing(SideBySide.Row::mostTelling, Judged.mostTellingFirst()))
                .toList();
        if (rows.isEmpty()) {
            return;
        }
        page.blank().line(title);
        if (!inFull) {
            page.wrapped(
                    "  ",
                    "  ",
                    rows.stream().map(row -> row.finding().shown()).collect(Collectors.joining(", ")) + ".");
            return;
        }
        rows.forEach(row -> told(page, row, beside));
    }

    /** What stands for one of them and is no rate, with the reason; the rest of it only where everything is asked for. */
    private void uncompared(Page page, SideBySide beside) {
        List<SideBySide.Row> rows = beside.rows().stream()
                .filter(row -> row.whyNot().isPresent()
                        && row.judged().stream()
                                .anyMatch(one -> one.outcome().rate().opportunities() > 0))
                .filter(row -> all
                        || row.judged().stream().anyMatch(one -> one.verdict().stands()))
                .sorted(Comparator.comparing(SideBySide.Row::mostTelling, Judged.mostTellingFirst()))
                .toList();
        if (!rows.isEmpty()) {
            page.blank().line("Not compared");
            rows.forEach(row -> told(page, row, beside));
        }
    }

    private static void told(Page page, SideBySide.Row row, SideBySide beside) {
        page.line("  " + capital(row.finding().shown()));
        for (int i = 0; i < row.judged().size(); i++) {
            Judged one = row.judged().get(i);
            page.line("      " + VerdictMarks.of(one.verdict()) + " " + VerdictMarks.word(one.verdict()) + ", "
                    + beside.names().get(i));
        }
        row.gaps().forEach(gap -> page.wrapped("      ", "        ", gap.sentence()));
        row.whyNot().ifPresent(why -> page.wrapped("      ", "        ", why));
    }

    private static String honest(SideBySide beside) {
        if (beside.comparisons() == 0) {
            return "Nothing could be compared: no finding has chances enough on both sides.";
        }
        return Numbers.of(beside.comparisons(), "comparison") + " made. Looked at one by one, about " + beside.byLuck()
                + " would look like a difference by luck alone; so the tape is said to tell them apart only where, of all"
                + " that is so said, no more than " + Math.round(100 * BenjaminiHochberg.ALLOWED)
                + " in 100 are expected to be luck (Benjamini and Hochberg). Likely ranges are of 90 %.";
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
