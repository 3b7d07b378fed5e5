package rushlight.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
            throw new picocli.CommandLine.ParameterException(
                    spec.commandLine(), "Name a file that ends in .csv or .ttl; this is " + name + ".");
        }
        if (turtle && !prospects.isEmpty()) {
            throw new picocli.CommandLine.ParameterException(
                    spec.commandLine(), "--prospect goes with a .csv file; the Turtle holds everything.");
        }
        PrintWriter out = spec.commandLine().getOut();
        if (!data.isThere()) {
            spec.commandLine().getErr().println("There is no film in " + data.folder() + "; nothing was written.");
            return 1;
        }
        try (Archive archive = data.open()) {
            if (turtle) {
                whole(archive::writeTurtle);
                out.println("Wrote the film as Turtle to " + file + "; opinions and projections are not in it.");
                return 0;
            }
            List<Log> logs = archive.logs().stream().filter(this::isWanted).toList();
            if (logs.isEmpty()) {
                spec.commandLine()
                        .getErr()
                        .println("There is no film of that in " + data.folder() + "; nothing was written.");
                return 1;
            }
            whole(stream -> write(archive, logs, stream));
            int readings = logs.stream().mapToInt(log -> log.readings().size()).sum();
            out.println("Wrote " + Numbers.of(readings, "reading") + " in " + Numbers.of(logs.size(), "log") + " to "
                    + file + ".");
            return 0;
        }
    }

    private int person(String wanted, String name) {
        if (!name.endsWith(".zip") || !prospects.isEmpty()) {
            throw new picocli.CommandLine.ParameterException(
                    spec.commandLine(),
                    "Everything of one prospect goes into a file that ends in .zip; leave --prospect out.");
        }
        if (!data.isThere()) {
            spec.commandLine().getErr().println("There is no film in " + data.folder() + "; nothing was written.");
            return 1;
        }
        try (Archive archive = data.open()) {
            Optional<Prospect> found = ProspectNames.one(
                    wanted, archive.prospects(), spec.commandLine().getErr());
            if (found.isEmpty()) {
                return 1;
            }
            Prospect prospect = found.get();
            whole(stream -> PersonExport.write(archive, prospect, stream));
            spec.commandLine()
                    .getOut()
                    .println("Wrote everything that is kept of " + prospect.name() + " (" + prospect.id() + ") to "
                            + file + ".");
            return 0;
        }
    }

    private boolean isWanted(Log log) {
        return prospects.isEmpty()
                || prospects.contains(log.prospect().id())
                || prospects.contains(log.prospect().name());
    }

    private static void write(Archive archive, List<Log> logs, OutputStream stream) throws IOException {
        Writer writer = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
        FilmLogWriter.of(archive.book().taxonomy().film()).write(logs, writer);
        writer.flush();
    }

    /** What writes a file. */
    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    /** Writes beside the file and then takes its place, so that nothing is ever half written. */
    private void whole(Writing writing) {
        Path next = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(next)) {
                writing.to(out);
            }
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        } finally {
            WholeFile.discard(next);
        }
    }
}
