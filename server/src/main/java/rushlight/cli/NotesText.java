package rushlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import rushlight.knowledge.Taxonomy;
import rushlight.notes.Actor;
import rushlight.notes.Assertion;
import rushlight.notes.Band;
import rushlight.notes.Mention;
import rushlight.notes.Notes;
import rushlight.notes.ProposedRep;
import rushlight.web.Spool;

/** Notes as a page: the reps in order, each tag with the words it came from. */
final class NotesText {
    private static final int LABEL = 30;

    private final Taxonomy taxonomy;

    NotesText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** Writes what a file says, piece by piece: only how many reps there are, and what stands behind them, waits for its end. */
    void write(String source, Consumer<Consumer<Notes>> pieces, PrintWriter out) throws IOException {
        try (Spool reps = Spool.open();
                Spool statements = Spool.open();
                Spool hidden = Spool.open()) {
            int[] count = {0};
            pieces.accept(piece -> {
                count[0] += piece.reps().size();
                piece.reps().forEach(rep -> put(reps, page -> rep(page, rep)));
                piece.statements().forEach(said -> put(statements, page -> tag(page, said)));
                piece.hidden()
                        .forEach(one -> put(
                                hidden, page -> page.line("    \u201C" + plain(one.text()) + "\u201D: " + one.why())));
            });
            out.print(new Page()
                    .line(source + ": " + Numbers.of(count[0], "rep") + " proposed.")
                    .blank());
            reps.copyTo(out, 0);
            part("Said of him in general (no rep shows it)", statements, out);
            part("Left out", hidden, out);
        }
    }

    private static void part(String title, Spool lines, PrintWriter out) throws IOException {
        if (!lines.isEmpty()) {
            out.print(new Page().line(title));
            lines.copyTo(out, 0);
            out.print(new Page().blank());
        }
    }

    private static void put(Spool spool, Consumer<Page> lines) {
        Page page = new Page();
        lines.accept(page);
        try {
            spool.writer().write(page.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void rep(Page page, ProposedRep rep) {
        String time = rep.start().isPresent() ? "  " + clock(rep.start()) : "";
        String again = rep.replays().isEmpty()
                ? ""
                : "  looked at again " + Numbers.of(rep.replays().size(), "time");
        page.line("Rep " + rep.ordinal() + time + "  " + rep.phase().orElse("phase not said") + again);
        rep.tags().forEach(said -> tag(page, said));
        page.blank();
    }

    private void tag(Page page, Mention said) {
        String label = taxonomy.shown(said.concept());
        List<String> marks = new ArrayList<>();
        if (said.assertion() != Assertion.PERFORMED) {
            marks.add(said.assertion().slug().replace('-', ' '));
        }
        if (said.actor() == Actor.OTHER) {
            marks.add("somebody else");
        }
        said.hand().ifPresent(hand -> marks.add(hand + " hand"));
        said.target().ifPresent(hand -> marks.add("on his " + hand + " hand"));
        said.side().ifPresent(marks::add);
        if (said.band() == Band.WEAK) {
            marks.add("a guess");
        }
        String order = said.order() == 0 ? "   " : said.order() + ". ";
        String name = said.actor() == Actor.BLOCKER ? "[" + label + "]" : label;
        page.line("  " + order + name + " ".repeat(Math.max(1, LABEL - name.length())) + "\u201C" + plain(said.text())
                + "\u201D" + (marks.isEmpty() ? "" : "  (" + String.join(", ", marks) + ")"));
    }

    private static String plain(String text) {
        return text.replace('\n', ' ');
    }

    private static String clock(OptionalDouble seconds) {
        long whole = (long) seconds.getAsDouble();
        return String.format("%d:%02d", whole / 60, whole % 60);
    }
}
