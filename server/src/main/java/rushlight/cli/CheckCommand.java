package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Book;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.knowledge.BookCheck;

/** Says what would stop an import, or what is wrong with the book and a user's own terms. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Reads film logs and says every fault without keeping anything; with no file, checks the book and",
            "the overlay of the data folder."
        })
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FILE", arity = "0..*", description = "film logs (CSV)")
    private List<Path> files = List.of();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return files.isEmpty() ? book() : logs();
    }

    private int book() {
        PrintWriter out = spec.commandLine().getOut();
        Book book = data.book();
        List<BookCheck.Trouble> troubles = BookCheck.of(book.ontology());
        for (BookCheck.Trouble trouble : troubles) {
            String where = trouble.local() ? " (your file)" : "";
            out.println(
                    (trouble.warning() ? "note   " : "mend   ") + trouble.about() + where + ": " + trouble.message());
        }
        long faults = troubles.stream().filter(t -> !t.warning()).count();
        out.println(
                faults == 0
                        ? "The book is sound: " + book.taxonomy().concepts().size() + " terms, "
                                + book.taxonomy().pairings().size() + " pairings, "
                                + book.taxonomy().fitRules().size() + " fit rules."
                        : faults + (faults == 1 ? " thing" : " things") + " to mend.");
        return faults == 0 ? 0 : 1;
    }

    private int logs() {
        PrintWriter out = spec.commandLine().getOut();
        LogFiles reader = new LogFiles(data.book().taxonomy(), FilmLogReader.Options.none(), out);
        for (Path file : files) {
            int before = reader.faults();
            List<Log> logs = reader.read(file, false);
            if (reader.faults() == before) {
                int reps = logs.stream().mapToInt(l -> l.readings().size()).sum();
                out.println(
                        file.getFileName() + ": " + reps + " readings in " + logs.size() + " logs, nothing to mend.");
            }
        }
        return reader.faults() == 0 ? 0 : 1;
    }
}
