package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
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
            "Keeps film logs. A log is what one evaluator read of one prospect in one game; importing it again",
            "replaces it. Files with a fault are not imported at all: every fault is told with its line, its",
            "column and what may have been meant.",
            ""
        })
final class ImportCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FILE", arity = "0..*", description = "film logs (CSV)")
    private List<Path> files = List.of();

    @Option(
            names = "--prospects",
            paramLabel = "FILE",
            description = "who they are: id, name, height, weight ... (CSV)")
    private Optional<Path> prospects = Optional.empty();

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
        Optional<List<Prospect>> listed = listed(err);
        if (listed.isEmpty()) {
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
        files.forEach(file -> logs.addAll(reader.read(file, keepGood)));
        if (reader.faults() > 0 && !keepGood) {
            err.println("Nothing was imported. " + reader.faults() + (reader.faults() == 1 ? " fault" : " faults")
                    + " to mend; --keep-good imports the rows without one.");
            return 1;
        }
        if (!listed.get().isEmpty()) {
            archive.putProspects(listed.get());
            out.println("Know " + listed.get().size() + " prospects from "
                    + prospects.get().getFileName() + ".");
        }
        int stored = logs.isEmpty() ? 0 : store(archive, logs, out, err);
        return reader.faults() > 0 ? 1 : stored;
    }

    private Optional<List<Prospect>> listed(PrintWriter err) {
        if (prospects.isEmpty()) {
            return Optional.of(List.of());
        }
        ProspectsReader.Result result = ProspectsReader.read(prospects.get());
        result.warnings().forEach(w -> err.println(prospects.get().getFileName() + ": note: " + w.text()));
        result.faults().forEach(f -> err.println(prospects.get().getFileName() + ": " + f.text()));
        return result.faults().isEmpty() ? Optional.of(result.prospects()) : Optional.empty();
    }

    private int store(Archive archive, List<Log> logs, PrintWriter out, PrintWriter err) {
        PutResult result = archive.put(logs, add);
        if (result instanceof PutResult.Refused refused) {
            refused.reasons().forEach(err::println);
            err.println("Nothing was imported.");
            return 1;
        }
        List<PutResult.Replaced> replaced = ((PutResult.Stored) result).logs();
        int after = replaced.stream().mapToInt(PutResult.Replaced::after).sum();
        int before = replaced.stream().mapToInt(PutResult.Replaced::before).sum();
        long fresh = replaced.stream().filter(r -> r.before() == 0).count();
        out.println(
                "Imported " + after + " readings in " + replaced.size() + " logs into " + data.folder() + ": " + fresh
                        + " new, " + (replaced.size() - fresh) + " replaced"
                        + (before > 0 ? " (" + before + " readings went)" : "")
                        + ".");
        return 0;
    }
}
