package rushlight.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rushlight.knowledge.Taxonomy;
import rushlight.notes.Actor;
import rushlight.notes.Assertion;
import rushlight.notes.Band;
import rushlight.notes.Hidden;
import rushlight.notes.Mention;
import rushlight.notes.Notes;
import rushlight.notes.ProposedRep;

/** Notes as a page: the reps in order, each tag with the words it came from. */
final class NotesText {
    private static final int LABEL = 30;

    private final Taxonomy taxonomy;

    NotesText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    String of(Notes notes) {
        Page page = new Page();
        page.line(notes.source() + ": " + Numbers.of(notes.reps().size(), "rep") + " proposed.")
                .blank();
        notes.reps().forEach(rep -> rep(page, rep));
        if (!notes.statements().isEmpty()) {
            page.line("Said of him in general (no rep shows it)");
            notes.statements().forEach(said -> tag(page, said));
            page.blank();
        }
        if (!notes.hidden().isEmpty()) {
            page.line("Left out");
            for (Hidden hidden : notes.hidden()) {
                page.line("    \u201C" + plain(hidden.text()) + "\u201D: " + hidden.why());
            }
            page.blank();
        }
        return page.toString();
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
