package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.PutResult;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ProspectsReader;

/** Keeps film logs in a data folder. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description = {
            "Keeps your film logs in the data folder.",
            "",
            "A log is what one evaluator read of one prospect in one game; importing it again replaces it. A file"
                    + " with a fault is not imported at all: every fault is told with its line, its column and what"
                    + " may have been meant. A list of prospects is known by its header, too.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight import friday.csv                    keep one log",
            "  rushlight import prospects.csv friday.csv      who they are, and what they did",
            "  rushlight import --keep-good friday.csv        the good rows now; the others come back in",
            "                                                 friday.rejected.csv with the reasons",
            "  rushlight import --add friday.rejected.csv     the mended rows beside those already kept"
        })
final class ImportCommand implements Callable<Integer> {
    private static final int MANY = 5_000;

    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FILE", arity = "0..*", description = "film logs or lists of prospects (CSV)")
    private List<Path> files = List.of();

    @Option(
            names = "--prospects",
            paramLabel = "FILE",
            description = "who they are: id, name, height, weight ... (CSV); may repeat")
    private List<Path> prospects = List.of();

    @Option(names = "--evaluator", paramLabel = "NAME", description = "who read the rows that name nobody")
    private Optional<String> evaluator = Optional.empty();

    @Option(names = "--numbering", paramLabel = "A|B|C|D", description = "numbering system of rows that name none")
    private Optional<String> numbering = Optional.empty();

    @Option(
            names = "--keep-good",
            description = "import the rows without a fault; the others come back as a CSV with reasons")
    private boolean keepGood;

    @Option(names = "--add", description = "keep readings already stored whose rep is not in the file")
    private boolean add;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (files.isEmpty() && prospects.isEmpty()) {
            throw new picocli.CommandLine.ParameterException(
                    spec.commandLine(), "Name at least one film log (CSV) to import.");
        }
        try (Archive archive = data.open()) {
            return run(archive);
        }
    }

    private int run(Archive archive) {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        List<Path> lists = new ArrayList<>(prospects);
        files.stream().filter(ProspectsReader::isList).forEach(lists::add);
        Optional<List<Prospect>> listed = listed(lists, err);
        if (listed.isEmpty()) {
            err.println("Nothing was imported.");
            return 1;
        }
        List<Prospect> known = new ArrayList<>(archive.prospects());
        known.removeIf(old -> listed.get().stream().anyMatch(p -> p.id().equals(old.id())));
        known.addAll(listed.get());
        LogFiles reader = new LogFiles(
                archive.book().taxonomy(),
                new FilmLogReader.Options(evaluator, numbering.or(archive::numbering), known),
                err);
        List<Log> logs = new ArrayList<>();
        files.stream().filter(file -> !lists.contains(file)).forEach(file -> logs.addAll(reader.read(file, keepGood)));
        if (reader.faults() > 0 && !keepGood) {
            err.println("Nothing was imported. " + Numbers.of(reader.faults(), "fault")
                    + (reader.foundGood() ? " to mend; --keep-good imports the rows without one." : " to mend."));
            return 1;
        }
        int stored = store(archive, logs, listed.get(), lists, out, err);
        return reader.faults() > 0 ? 1 : stored;
    }

    /** Everybody on the lists; empty, and told, where one of them has a fault. */
    private static Optional<List<Prospect>> listed(List<Path> lists, PrintWriter err) {
        List<Prospect> all = new ArrayList<>();
        boolean good = true;
        for (Path file : lists) {
            ProspectsReader.Result result = ProspectsReader.read(file);
            result.warnings().forEach(w -> err.println(LogFiles.of(file, w, "note: ")));
            result.faults().forEach(f -> err.println(LogFiles.of(file, f, "")));
            good &= result.faults().isEmpty();
            all.addAll(result.prospects());
        }
        return good ? Optional.of(all) : Optional.empty();
    }

    private int store(
            Archive archive,
            List<Log> logs,
            List<Prospect> listed,
            List<Path> lists,
            PrintWriter out,
            PrintWriter err) {
        if (logs.isEmpty() && listed.isEmpty()) {
            return 0;
        }
        int read = logs.stream().mapToInt(log -> log.readings().size()).sum();
        if (read >= MANY) {
            err.println("Classifying and storing " + Numbers.of(read, "reading") + " ...");
            err.flush();
        }
        PutResult result = archive.put(logs, listed, add);
        if (result instanceof PutResult.Refused refused) {
            refused.reasons().forEach(err::println);
            err.println("No film was imported.");
            return 1;
        }
        if (!listed.isEmpty()) {
            out.println("Know " + Numbers.of(listed.size(), "prospect") + " from "
                    + lists.stream().map(file -> file.getFileName().toString()).collect(Collectors.joining(", "))
                    + ".");
        }
        if (logs.isEmpty()) {
            return 0;
        }
        List<PutResult.Replaced> replaced = ((PutResult.Stored) result).logs();
        int after = replaced.stream().mapToInt(PutResult.Replaced::after).sum();
        int before = replaced.stream().mapToInt(PutResult.Replaced::before).sum();
        long fresh = replaced.stream().filter(r -> r.before() == 0).count();
        out.println("Imported " + Numbers.of(after, "reading") + " in " + Numbers.of(replaced.size(), "log") + " into "
                + data.folder() + ": " + fresh + " new, " + (replaced.size() - fresh) + " replaced"
                + (before > 0 ? " (" + Numbers.of(before, "reading") + " went)" : "")
                + ".");
        return 0;
    }
}
