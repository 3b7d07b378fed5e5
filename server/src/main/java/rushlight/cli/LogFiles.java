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

    LogFiles(Taxonomy taxonomy, FilmLogReader.Options options, PrintWriter err) {
        this.reader = FilmLogReader.of(taxonomy);
        this.options = options;
        this.err = err;
    }

    /** How many faults were told so far. */
    int faults() {
        return faults;
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
        result.warnings().forEach(note -> tell(file, "note: " + note.text()));
        if (result instanceof ReadResult.Accepted accepted) {
            return accepted.logs();
        }
        ReadResult.Rejected rejected = (ReadResult.Rejected) result;
        rejected.faults().stream().map(Fault::text).forEach(text -> tell(file, text));
        faults += rejected.faults().size();
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

    private void tell(Path file, String text) {
        err.println(file.getFileName() + ": " + text);
    }
}
