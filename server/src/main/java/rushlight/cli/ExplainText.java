package rushlight.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import rushlight.archive.Book;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.rules.Explanation;

/** How the rules read one rep: each class with the sentence of its rule and the tags that fired it. */
final class ExplainText {
    private static final String INDENT = "      ";

    private final Book book;

    ExplainText(Book book) {
        this.book = book;
    }

    /** Prints every reading of the rep; 1 where there is none. */
    int print(String rep, List<Log> logs, List<String> prospects, PrintWriter out, PrintWriter err) {
        int readings = 0;
        for (Log log : logs) {
            for (Reading reading : log.readings()) {
                if (prospects.contains(log.prospect().id())
                        && reading.rep().rep().equals(rep)) {
                    out.println(explained(log, reading));
                    readings++;
                }
            }
        }
        if (readings == 0) {
            err.println(
                    "There is no rep \"" + rep + "\" on this film. The reps stand in the first column of a film log.");
        }
        return readings == 0 ? 1 : 0;
    }

    private String explained(Log log, Reading reading) {
        Page page = new Page();
        page.line(log.prospect().name() + ", " + log.game().name() + ", rep "
                + reading.rep().rep() + ", read by " + log.evaluator());
        if (!reading.exchange().isEmpty()) {
            page.wrapped("  Exchange: ", INDENT, exchange(reading));
        }
        List<Explanation> explanations = book.rules().explain(reading, log.charted());
        if (explanations.isEmpty()) {
            page.line("  The rules conclude nothing from these tags.");
        }
        String last = "";
        for (Explanation one : explanations) {
            if (!one.repClass().equals(last)) {
                page.line("  " + book.taxonomy().label(one.repClass()));
                last = one.repClass();
            }
            page.wrapped(INDENT + "because: ", INDENT + "  ", one.sentence());
            if (!one.tags().isEmpty()) {
                page.wrapped(INDENT + "from: ", INDENT + "  ", tags(one));
            }
            if (!one.book().isEmpty()) {
                page.wrapped(INDENT + "by the book's: ", INDENT + "  ", String.join(", ", one.book()));
            }
            if (!one.hangsOn().isEmpty()) {
                page.wrapped(INDENT + "it hangs on: ", INDENT + "  ", String.join("; ", one.hangsOn()));
            }
        }
        return page.toString();
    }

    private String exchange(Reading reading) {
        return reading.exchange().stream()
                .map(step -> {
                    String label = book.taxonomy().label(step.concept())
                            + step.hand().map(hand -> " (" + hand + " hand)").orElse("");
                    return step.by() == rushlight.film.Step.By.HIM ? label : "[" + label + "]";
                })
                .collect(Collectors.joining(" > "));
    }

    private static String tags(Explanation one) {
        return one.tags().stream()
                .map(tag -> tag.value().isEmpty() ? tag.column() + " blank" : tag.column() + " = " + tag.value())
                .collect(Collectors.joining(", "));
    }
}
