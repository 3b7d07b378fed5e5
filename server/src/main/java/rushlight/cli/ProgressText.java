package rushlight.cli;

import java.util.List;
import java.util.Locale;
import rushlight.evidence.Change;
import rushlight.findings.Judged;
import rushlight.plan.Progress;
import rushlight.plan.ProgressSince;
import rushlight.report.VerdictMarks;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;

/** Then and now as a coach reads it: what is cleared, what gets better, what the games since cannot tell. */
final class ProgressText {
    private static final String INDENT = "      ";

    private static final List<Change> IN_ORDER = List.of(
            Change.HOLD,
            Change.SLIPPING,
            Change.CLEARED,
            Change.IMPROVING,
            Change.NO_EVIDENCE_YET,
            Change.NOT_ENOUGH_TAPE);

    private ProgressText() {}

    static String of(ProgressSince progress) {
        Page page = new Page();
        head(page, progress);
        for (Change change : IN_ORDER) {
            List<Progress> some = progress.findings().stream()
                    .filter(one -> one.change() == change)
                    .toList();
            if (!some.isEmpty()) {
                page.blank().line(title(change));
                some.forEach(one -> write(page, one));
            }
        }
        if (progress.findings().isEmpty()) {
            page.blank().line("No gap stood before, so there is nothing to test again.");
        }
        if (!progress.fresh().isEmpty()) {
            page.blank().line("Stands on these games and did not stand before");
            progress.fresh().forEach(one -> fresh(page, one));
        }
        if (!progress.cautions().isEmpty()) {
            page.blank().line("When reading this");
            progress.cautions().forEach(caution -> page.wrapped("  - ", "    ", caution));
        }
        return page.toString();
    }

    private static void head(Page page, ProgressSince progress) {
        TapedGame first = progress.since().first();
        String left = progress.prospect().name();
        String right =
                "since " + first.name() + first.date().map(date -> ", " + date).orElse("");
        page.line(left + " ".repeat(Math.max(2, Page.WIDTH - left.length() - right.length())) + right);
        page.line("=".repeat(Page.WIDTH));
        page.wrapped(
                "",
                "",
                "Before: " + half(progress.since().before()) + ". Since: "
                        + half(progress.since().after())
                        + ". What was found before is held against the reps since, which had no part in finding it.");
    }

    private static String half(Tape tape) {
        return Numbers.of(tape.size(), "rep") + " from "
                + Numbers.of(tape.games().size(), "game");
    }

    private static String title(Change change) {
        return switch (change) {
            case HOLD -> "Hold";
            case CLEARED -> "Cleared";
            case IMPROVING -> "Improving, not cleared yet";
            case SLIPPING -> "Slipping";
            case NO_EVIDENCE_YET -> "No evidence of a change yet";
            case NOT_ENOUGH_TAPE -> "Not enough tape since";
        };
    }

    private static void write(Page page, Progress one) {
        String word = "was " + VerdictMarks.word(one.verdict());
        String label = "  " + VerdictMarks.of(one.verdict()) + " "
                + capital(one.finding().shown());
        page.line(label + " ".repeat(Math.max(2, Page.WIDTH - label.length() - word.length())) + word);
        page.wrapped(INDENT, INDENT, one.sentence());
    }

    private static void fresh(Page page, Judged one) {
        page.line("  " + VerdictMarks.of(one.verdict()) + " "
                + capital(one.finding().shown()));
        page.wrapped(INDENT, INDENT, one.sentence());
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
