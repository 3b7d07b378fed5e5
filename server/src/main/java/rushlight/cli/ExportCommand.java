package rushlight.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.csv.FilmLogWriter;

/** Gives the film back: as a film log, or as the triples it is stored as. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = {
            "Writes the stored film to a file.",
            "",
            "A name that ends in .csv makes a film log that imports again as it is; one that ends in .ttl makes"
                    + " Turtle. With --person, a name that ends in .zip gets everything that is kept of one prospect.",
            "",
            "The first two hold the film alone. What people keep beside it (opinions, projections, saved questions,"
                    + " decisions on notes, plans, texts of reports), the history of changes and your overlay.ttl are"
                    + " in a backup: rushlight backup FILE.",
            ""
        })
final class ExportCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FILE", description = "where to write; the ending decides: .csv or .ttl")
    private Path file = Path.of("film.csv");

    @Option(names = "--person", paramLabel = "PROSPECT", description = "everything of one prospect, for him (.zip)")
    private Optional<String> person = Optional.empty();

    @Option(
            names = "--prospect",
            paramLabel = "NAME",
            description = "only the logs of these prospects, by name or id (.csv)")
    private List<String> prospects = List.of();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        String name = file.getFileName().toString();
        boolean turtle = name.endsWith(".ttl");
        if (person.isPresent()) {
            return person(person.get(), name);
        }
        if (!turtle && !name.endsWith(".csv")) {
            throw new ParameterException(
                    spec.commandLine(), "Name a file that ends in .csv or .ttl; this is " + name + ".");
        }
        if (turtle && !prospects.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--prospect goes with a .csv file; the Turtle holds everything.");
        }
        PrintWriter out = spec.commandLine().getOut();
        Optional<String> refusal = refusal();
        if (refusal.isPresent()) {
            return refuse(refusal.get());
        }
        try (Archive archive = data.open()) {
            if (turtle) {
                WholeFile.write(file, archive.store()::writeTurtle);
                out.println("Wrote the film as Turtle to " + file + "; opinions and projections are not in it.");
                return 0;
            }
            Optional<List<Log>> wanted = wanted(archive);
            if (wanted.isEmpty()) {
                return 1;
            }
            List<Log> logs = wanted.get();
            if (logs.isEmpty()) {
                return refuse("There is no film of that in " + data.folder() + "; nothing was written.");
            }
            WholeFile.write(file, stream -> write(archive, logs, stream));
            int readings = logs.stream().mapToInt(log -> log.readings().size()).sum();
            out.println("Wrote " + Numbers.of(readings, "reading") + " in " + Numbers.of(logs.size(), "log") + " to "
                    + file + ".");
            return 0;
        }
    }

    private int person(String wanted, String name) {
        if (!name.endsWith(".zip") || !prospects.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Everything of one prospect goes into a file that ends in .zip; leave --prospect out.");
        }
        Optional<String> refusal = refusal();
        if (refusal.isPresent()) {
            return refuse(refusal.get());
        }
        try (Archive archive = data.open()) {
            Optional<Prospect> found = ProspectNames.one(
                    wanted, archive.prospects(), spec.commandLine().getErr());
            if (found.isEmpty()) {
                return 1;
            }
            Prospect prospect = found.get();
            WholeFile.write(file, stream -> PersonExport.write(archive, prospect, stream));
            spec.commandLine()
                    .getOut()
                    .println("Wrote everything that is kept of " + prospect.name() + " (" + prospect.id() + ") to "
                            + file + ".");
            return 0;
        }
    }

    /** Why nothing can be written, whatever is asked for. */
    private Optional<String> refusal() {
        return data.isThere()
                ? WholeFile.refusal(file)
                : Optional.of("There is no film in " + data.folder() + "; nothing was written.");
    }

    private int refuse(String why) {
        spec.commandLine().getErr().println(why);
        return 1;
    }

    /** The logs of those who were named, else all; empty, and told, where a name is nobody's. */
    private Optional<List<Log>> wanted(Archive archive) {
        if (prospects.isEmpty()) {
            return Optional.of(archive.logs());
        }
        return ProspectNames.named(
                        prospects, archive.prospects(), spec.commandLine().getErr())
                .map(named -> archive.logs().stream()
                        .filter(log -> named.stream()
                                .anyMatch(one -> one.id().equals(log.prospect().id())))
                        .toList());
    }

    private static void write(Archive archive, List<Log> logs, OutputStream stream) throws IOException {
        Writer writer = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
        FilmLogWriter.of(archive.book().taxonomy().film()).write(logs, writer);
        writer.flush();
    }
}
