package rushlight.film.csv;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.knowledge.Column;
import rushlight.knowledge.FilmColumns;

/**
 * Writes film logs as CSV that reads back the same: the columns of the book in their order, without the list columns
 * nobody charted. Where the logs differ in what was charted, a list column stands for all of them and {@code not_seen}
 * names it on the reps of those that left it out.
 */
public final class FilmLogWriter {
    private final FilmColumns film;

    private FilmLogWriter(FilmColumns film) {
        this.film = film;
    }

    /** A writer for any number of files. */
    public static FilmLogWriter of(FilmColumns film) {
        return new FilmLogWriter(film);
    }

    /** Writes the header and one row a reading. */
    public void write(Collection<Log> logs, Appendable out) throws IOException {
        Set<String> charted =
                logs.stream().flatMap(log -> log.charted().stream()).collect(Collectors.toSet());
        List<Column> columns = film.all().stream()
                .filter(column ->
                        !column.list() || column.name().equals(Columns.NOT_SEEN) || charted.contains(column.name()))
                .toList();
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(columns.stream().map(Column::name).toList());
        for (Log log : logs) {
            Set<String> left = new TreeSet<>(charted);
            left.removeAll(log.charted());
            for (Reading reading : log.readings()) {
                List<String> cells = new ArrayList<>(columns.size());
                for (Column column : columns) {
                    cells.add(SafeCell.written(Cells.of(column, log, reading, left)));
                }
                printer.printRecord(cells);
            }
        }
    }
}
