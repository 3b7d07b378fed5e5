package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Book;
import rushlight.archive.OverlayCheck;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ProspectsReader;
import rushlight.knowledge.BookCheck;
import rushlight.knowledge.Coverage;
import rushlight.web.CoverageAnswer;
import rushlight.web.Json;

/** Says what would stop an import, or what is wrong with the book and a user's own terms. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Says every fault of a film log, or of the book, and keeps nothing.",
            "",
            "With a file: what would stop its import. Without one: whether the book and the overlay of the data"
                    + " folder (overlay.ttl) are sound. With --coverage: how many terms of each kind have what they"
                    + " can be told with, and which stand alone.",
            ""
        })
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FILE", arity = "0..*", description = "film logs or lists of prospects (CSV)")
    private List<Path> files = List.of();

    @Option(names = "--coverage", description = "what the terms of each kind have, and what they lack")
    private boolean coverage;

    @Option(names = "--all", description = "with --coverage: list also what a kind could have and lacks")
    private boolean all;

    @Option(
            names = "--format",
            paramLabel = "text|json",
            defaultValue = "text",
            description = "with --coverage: for people or for programs")
    private Format format = Format.TEXT;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!coverage && (all || format == Format.JSON)) {
            throw new ParameterException(spec.commandLine(), "--all and --format go with --coverage.");
        }
        if (coverage && !files.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--coverage looks at the book: leave out the files.");
        }
        if (coverage) {
            return coverage();
        }
        return files.isEmpty() ? book() : logs();
    }

    private int coverage() {
        Book book = data.book();
        Coverage found = Coverage.of(book.ontology());
        spec.commandLine()
                .getOut()
                .print(
                        format == Format.JSON
                                ? Json.text(CoverageAnswer.of(found))
                                : new CoverageText(book.taxonomy()).of(found, all));
        return found.whole() ? 0 : 1;
    }

    private int book() {
        PrintWriter out = spec.commandLine().getOut();
        List<BookCheck.Trouble> troubles = OverlayCheck.of(data.folder());
        troubles.forEach(trouble ->
                out.println((trouble.warning() ? "note   " : "mend   ") + where(trouble) + trouble.message()));
        long faults = troubles.stream().filter(t -> !t.warning()).count();
        if (faults > 0) {
            out.println(Numbers.of(faults, "thing") + " to mend.");
            return 1;
        }
        Book book = data.book();
        out.println("The book is sound: " + book.taxonomy().concepts().size() + " terms, "
                + book.taxonomy().pairings().size() + " pairings, "
                + book.taxonomy().fitRules().size() + " fit rules.");
        out.print(new OwnTerms(book).text());
        return 0;
    }

    private static String where(BookCheck.Trouble trouble) {
        if (!trouble.local()) {
            return trouble.about() + ": ";
        }
        String line = trouble.line().isPresent() ? ", line " + trouble.line().getAsLong() : "";
        String about = trouble.about().equals(Book.OVERLAY) ? "" : ", " + trouble.about();
        return Book.OVERLAY + line + about + ": ";
    }

    private int logs() {
        PrintWriter out = spec.commandLine().getOut();
        LogFiles reader = new LogFiles(data.book().taxonomy(), FilmLogReader.Options.none(), out);
        int faultsOfLists = 0;
        for (Path file : files) {
            if (ProspectsReader.isList(file)) {
                faultsOfLists += list(file, out);
                continue;
            }
            int before = reader.faults();
            List<Log> logs = reader.read(file, false);
            if (reader.faults() == before) {
                int reps = logs.stream().mapToInt(l -> l.readings().size()).sum();
                out.println(file.getFileName() + ": " + Numbers.of(reps, "reading") + " in "
                        + Numbers.of(logs.size(), "log") + ", nothing to mend.");
            }
        }
        return reader.faults() + faultsOfLists == 0 ? 0 : 1;
    }

    private static int list(Path file, PrintWriter out) {
        ProspectsReader.Result result = ProspectsReader.read(file);
        result.warnings().forEach(w -> out.println(LogFiles.of(file, w, "note: ")));
        result.faults().forEach(f -> out.println(LogFiles.of(file, f, "")));
        if (result.faults().isEmpty()) {
            out.println(file.getFileName() + ": "
                    + Numbers.of(result.prospects().size(), "prospect") + ", nothing to mend.");
        }
        return result.faults().size();
    }
}
