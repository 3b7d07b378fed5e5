package rushlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.archive.Book;
import rushlight.plan.ProgressSince;
import rushlight.plan.Progressing;
import rushlight.situation.Since;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;
import rushlight.web.Json;
import rushlight.web.ProgressAnswer;
import rushlight.words.NearestLabels;

/** Prints then and now of the prospects that were asked for. */
final class ProgressCommanded {
    private final Book book;
    private final String since;
    private final FormatOption format;

    ProgressCommanded(Book book, String since, FormatOption format) {
        this.book = book;
        this.since = since;
        this.format = format;
    }

    /** Prints it; 1, and the reason told, where somebody's tape cannot be cut there. */
    int print(List<Tape> tapes, PrintWriter out, PrintWriter err) {
        Progressing progressing = new Progressing(book.assessor());
        List<ProgressSince> told = new ArrayList<>();
        for (Tape tape : tapes) {
            Optional<Since> cut = Since.at(tape, since);
            if (cut.isEmpty()) {
                err.println(nearest(tape));
            } else {
                told.add(progressing.of(cut.orElseThrow()));
            }
        }
        if (format.isJson()) {
            out.print(Json.text(told.stream().map(ProgressAnswer::of).toList()));
        } else {
            told.forEach(one -> out.println(ProgressText.of(one)));
        }
        return told.size() == tapes.size() ? 0 : 1;
    }

    private String nearest(Tape tape) {
        List<String> names = tape.games().stream().map(TapedGame::name).toList();
        String who = tape.prospect().name();
        return since.matches("\\d{4}-\\d{2}-\\d{2}")
                ? "No game of " + who + " was played on " + since + " or later. His last: "
                        + tape.games().stream()
                                .filter(game -> game.date().isPresent())
                                .reduce((first, last) -> last)
                                .map(game -> game.name() + ", " + game.date().orElseThrow())
                                .orElse("none has a date")
                        + "."
                : who + " has no game \"" + since + "\" on tape. Nearest: "
                        + String.join(", ", NearestLabels.words(names).to(since, 3))
                        + ". A date is written 2025-10-01.";
    }
}
