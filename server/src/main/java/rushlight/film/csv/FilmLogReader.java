package rushlight.film.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Taxonomy;

/**
 * Reads a film log from CSV: all faults of a file at once, each with its line, its column and what would be right. The
 * columns, their words and their labels are the book's.
 */
public final class FilmLogReader {
    /** Who read a rep when nobody says. */
    public static final String UNNAMED = "unnamed";

    /**
     * What a file may leave out.
     *
     * @param evaluator who read the rows whose evaluator is blank
     * @param numbering letter of the numbering system of rows that name none
     * @param prospects the prospects that are listed, by their ids and names
     */
    public record Options(Optional<String> evaluator, Optional<String> numbering, List<Prospect> prospects) {
        public Options {
            prospects = List.copyOf(prospects);
        }

        /** Nothing is known beforehand. */
        public static Options none() {
            return new Options(Optional.empty(), Optional.empty(), List.of());
        }
    }

    private final FilmColumns film;
    private final RowReader rows;

    private FilmLogReader(Taxonomy taxonomy) {
        this.film = taxonomy.film();
        this.rows = new RowReader(taxonomy);
    }

    /** A reader for any number of files. */
    public static FilmLogReader of(Taxonomy taxonomy) {
        return new FilmLogReader(taxonomy);
    }

    /** Reads a file. */
    public ReadResult read(Path file, Options options) {
        String name = InputFile.name(file);
        return InputFile.refusal(file).map(FilmLogReader::refused).orElseGet(() -> {
            try (InputStream in = InputFile.open(file)) {
                return read(name, in, options);
            } catch (IOException e) {
                return refused(InputFile.unreadable(name, e));
            }
        });
    }

    /** Reads what was sent under a name. */
    public ReadResult read(String name, InputStream in, Options options) {
        try (CsvRows source = CsvRows.open(name, in)) {
            return read(name, source, options);
        } catch (IOException e) {
            return refused(InputFile.unreadable(name, e));
        }
    }

    private ReadResult read(String name, CsvRows source, Options options) throws IOException {
        Suggestions suggestions = new Suggestions();
        FaultList found = new FaultList();
        Optional<CsvRows.Row> first = source.next();
        if (first.isEmpty()) {
            return refused(Fault.ofFile(
                    Fault.Code.EMPTY_FILE,
                    name + " is empty; a film log starts with a row of column names: rep, prospect, game, ..."));
        }
        RowNotes headerNotes = new RowNotes(first.get().line(), suggestions);
        Header header = Header.read(first.get(), film, headerNotes);
        found.take(headerNotes);
        if (!header.isUsable()) {
            return new ReadResult.Rejected(found.faults(), found.warnings(), List.of(), BadRows.none());
        }
        LogBuilder logs = new LogBuilder(options);
        List<BadRows.BadRow> bad = new ArrayList<>();
        long count = 0;
        for (Optional<CsvRows.Row> row = source.next(); row.isPresent(); row = source.next()) {
            count++;
            RowNotes notes = new RowNotes(row.get().line(), suggestions);
            logs.add(rows.read(header, row.get(), options.numbering(), notes), notes);
            found.take(notes);
            if (!notes.faults().isEmpty()) {
                bad.add(new BadRows.BadRow(notes.line(), row.get().cells(), notes.faults()));
            }
        }
        if (count == 0) {
            found.take(Fault.ofFile(Fault.Code.NO_ROWS, name + " has a header and no reps below it."));
        }
        List<Log> read = logs.logs(header.charted(), new Log.Source(name, source.sha256OfFile()));
        if (found.faults().isEmpty()) {
            return new ReadResult.Accepted(read, found.warnings());
        }
        boolean headerIsGood = headerNotes.faults().isEmpty();
        return new ReadResult.Rejected(
                found.faults(),
                found.warnings(),
                headerIsGood ? read : List.of(),
                headerIsGood ? new BadRows(header.names(), bad) : BadRows.none());
    }

    private static ReadResult refused(Fault fault) {
        return new ReadResult.Rejected(List.of(fault), List.of(), List.of(), BadRows.none());
    }
}
