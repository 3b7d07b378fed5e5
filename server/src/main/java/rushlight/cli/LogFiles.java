package rushlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import rushlight.film.Log;
import rushlight.film.csv.Fault;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.knowledge.Taxonomy;

/** Reads the film logs a command names and says what is wrong with them. */
final class LogFiles {
    private static final long MEGABYTE = 1L << 20;
    private static final long LONG_WORK = 2 * MEGABYTE;

    private final FilmLogReader reader;
    private final FilmLogReader.Options options;
    private final PrintWriter err;
    private int faults;
    private boolean good;

    LogFiles(Taxonomy taxonomy, FilmLogReader.Options options, PrintWriter err) {
        this.reader = FilmLogReader.of(taxonomy);
        this.options = options;
        this.err = err;
    }

    /** How many faults were told so far. */
    int faults() {
        return faults;
    }

    /** Whether any row that was read so far has no fault and could be kept. */
    boolean foundGood() {
        return good;
    }

    /** A fault with its file in front; one of the file as a whole names it already. */
    static String of(Path file, Fault fault, String kind) {
        return (fault.line() == 0 ? "" : file.getFileName() + ": ") + kind + fault.text();
    }

    /** The logs of files that are wholly good; the faults of all others are told. */
    List<Log> read(List<Path> files) {
        List<Log> logs = new ArrayList<>();
        files.forEach(file -> logs.addAll(read(file, false)));
        return logs;
    }

    /**
     * The logs of one file; its faults and oddities are told.
     *
     * @param keepGood give the rows without a fault, and write the others beside the file
     */
    List<Log> read(Path file, boolean keepGood) {
        tellOfLongWork(file);
        ReadResult result = reader.read(file, options);
        result.warnings().forEach(note -> err.println(of(file, note, "note: ")));
        if (result instanceof ReadResult.Accepted accepted) {
            good |= !accepted.logs().isEmpty();
            return accepted.logs();
        }
        ReadResult.Rejected rejected = (ReadResult.Rejected) result;
        rejected.faults().forEach(fault -> err.println(of(file, fault, "")));
        faults += rejected.faults().size();
        good |= !rejected.good().isEmpty();
        if (!keepGood) {
            return List.of();
        }
        if (!rejected.badRows().rows().isEmpty()) {
            writeBack(file, rejected);
        }
        return rejected.good();
    }

    private void writeBack(Path file, ReadResult.Rejected rejected) {
        String name = file.getFileName().toString().replaceFirst("\\.csv$", "") + ".rejected.csv";
        Path target = file.resolveSibling(name);
        try (Writer out = Files.newBufferedWriter(target)) {
            rejected.badRows().write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(target.toString(), e);
        }
        int rows = rejected.badRows().rows().size();
        err.println(Numbers.of(rows, "row") + (rows == 1 ? " was" : " were") + " left out; see " + target
                + " for the reasons. Mend " + (rows == 1 ? "it" : "them")
                + " there and import that file with --add.");
    }

    private void tellOfLongWork(Path file) {
        long bytes = file.toFile().length();
        if (bytes >= LONG_WORK) {
            err.println("Reading " + file.getFileName() + " (" + bytes / MEGABYTE + " MB) ...");
            err.flush();
        }
    }
}
