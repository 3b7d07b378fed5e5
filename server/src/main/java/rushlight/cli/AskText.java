package rushlight.cli;

import java.util.List;
import java.util.stream.Collectors;
import rushlight.ask.Answer;
import rushlight.ask.Answers;
import rushlight.ask.Asked;
import rushlight.ask.Chip;
import rushlight.ask.SeenRep;
import rushlight.findings.Judged;
import rushlight.knowledge.Taxonomy;
import rushlight.report.VerdictMarks;
import rushlight.situation.Sighting;

/** Answers as a coach reads them: how the question was read, then each answer, said first and counted after. */
final class AskText {
    private static final String INDENT = "     ";
    private static final int REPS = 12;

    private final Taxonomy taxonomy;

    /** Writes with the labels of the book. */
    AskText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    String of(Answers answers) {
        Page page = new Page();
        read(page, answers.asked());
        page.blank();
        if (answers.total() == 0) {
            nothing(page, answers);
            return page.toString();
        }
        page.line(
                answers.answers().size() < answers.total()
                        ? answers.answers().size() + " of " + Numbers.of(answers.total(), "answer") + ":"
                        : Numbers.of(answers.total(), "answer") + ":");
        int number = 0;
        for (Answer answer : answers.answers()) {
            number++;
            page.blank();
            answer(page, number, answer);
        }
        if (answers.leftOut() > 0) {
            page.blank();
            page.wrapped(
                    "",
                    "",
                    Numbers.of(answers.leftOut(), "rep") + " left out of the counts: the evaluator was not sure.");
        }
        cautions(page, answers);
        return page.toString();
    }

    private static void read(Page page, Asked asked) {
        page.wrapped("Read as: ", "         ", asked.text());
        if (!asked.chips().isEmpty()) {
            String chips = asked.chips().stream().map(AskText::chip).collect(Collectors.joining(" \u00b7 "));
            page.wrapped("         ", "         ", chips);
        }
        if (!asked.unread().isEmpty()) {
            String words = asked.unread().stream()
                    .map(unread -> "\"" + unread.word() + "\"")
                    .collect(Collectors.joining(", "));
            page.wrapped("Not read: ", "          ", words + ".");
        }
    }

    private static String chip(Chip chip) {
        return chip.role().slug().replace('-', ' ') + ": " + chip.label() + (chip.guessed() ? " (a guess)" : "");
    }

    private static void nothing(Page page, Answers answers) {
        page.wrapped("", "", "No answer. " + answers.why().orElse(""));
        answers.tries().forEach(one -> page.wrapped("  Try: ", "       ", one));
    }

    private void answer(Page page, int number, Answer answer) {
        String place = String.format("%3d. ", number);
        if (answer instanceof Answer.Rep rep) {
            rep(page, place, rep.rep());
            return;
        }
        String thin = answer.count().map(Answer.Count::thin).orElse(false) ? "  (thin tape)" : "";
        page.wrapped(place, INDENT, mark(answer) + answer.label() + detail(answer) + thin);
        if (!answer.sentence().isEmpty()) {
            page.wrapped(INDENT, INDENT, answer.sentence());
        }
        answer.count()
                .filter(count -> !answer.sentence().contains("likely range"))
                .ifPresent(count -> page.wrapped(INDENT, INDENT, figures(answer, count)));
        more(page, answer);
        reps(page, answer.reps());
    }

    /** The verdict where there is one: a mark with its word. */
    private static String mark(Answer answer) {
        if (answer instanceof Answer.Finding finding) {
            return VerdictMarks.of(finding.judged().verdict()) + " ";
        }
        return "";
    }

    private static String detail(Answer answer) {
        if (answer instanceof Answer.Finding finding) {
            return ": " + VerdictMarks.word(finding.judged().verdict());
        }
        if (answer instanceof Answer.Player player) {
            return player.judged()
                    .map(Judged::verdict)
                    .map(verdict -> ": " + VerdictMarks.of(verdict) + " " + VerdictMarks.word(verdict))
                    .orElse("");
        }
        if (answer instanceof Answer.Counter counter) {
            String when = counter.trigger().isEmpty() ? "as a rule" : "against " + counter.trigger();
            String timing = counter.pairing().timing().stream().sorted().collect(Collectors.joining(", "));
            return ", " + when + " (" + timing + ", " + counter.pairing().support() + ")";
        }
        if (answer instanceof Answer.Alike alike) {
            return ", likeness " + Math.round(100 * alike.score()) + " of 100";
        }
        return "";
    }

    private static String figures(Answer answer, Answer.Count count) {
        String what = answer instanceof Answer.Counter ? " won on your film" : "";
        return count.rate().events() + " of " + count.rate().opportunities() + what + ", likely range "
                + Math.round(100 * count.shown().low()) + " to "
                + Math.round(100 * count.shown().high()) + " %.";
    }

    private void more(Page page, Answer answer) {
        if (answer instanceof Answer.Counter counter && !counter.requires().isEmpty()) {
            page.wrapped(INDENT + "Needs first: ", INDENT, labels(counter.requires()) + ".");
        } else if (answer instanceof Answer.Drill drill && !drill.about().isEmpty()) {
            page.wrapped(INDENT, INDENT, drill.about());
        } else if (answer instanceof Answer.Alike alike && !alike.apart().isEmpty()) {
            page.wrapped(INDENT + "Apart: ", INDENT, String.join(" ", alike.apart()));
        }
    }

    private String labels(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(", "));
    }

    private static void rep(Page page, String place, SeenRep rep) {
        Sighting at = rep.sighting();
        page.wrapped(place, INDENT, rep.prospect().name() + ", " + at.game() + " " + RepsText.where(at) + film(at));
        if (!rep.note().text().isEmpty()) {
            page.wrapped(INDENT + "\"", INDENT, rep.note().text() + "\"");
        }
    }

    private static void reps(Page page, List<SeenRep> reps) {
        RepsText.list(
                page,
                INDENT,
                reps.stream().filter(SeenRep::event).map(SeenRep::sighting).toList(),
                REPS);
    }

    private static String film(Sighting at) {
        return at.video()
                .flatMap(video -> at.start().map(start -> "  [" + video + " " + start + "]"))
                .orElse("");
    }

    private static void cautions(Page page, Answers answers) {
        boolean trains = answers.answers().stream().anyMatch(Answer.Drill.class::isInstance);
        if (answers.cautions().isEmpty() && !trains) {
            return;
        }
        page.blank();
        answers.cautions().forEach(caution -> page.wrapped("Mind: ", "      ", caution));
        if (trains) {
            page.line(AssessText.CAUTION);
        }
    }
}
