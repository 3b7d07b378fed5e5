package rushlight.film.csv;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import rushlight.film.Game;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.Step;
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
                    cells.add(SafeCell.written(cell(column, log, reading, left)));
                }
                printer.printRecord(cells);
            }
        }
    }

    private static String cell(Column column, Log log, Reading reading, Set<String> left) {
        Game game = log.game();
        return switch (column.name()) {
            case Columns.REP -> reading.rep().rep();
            case Columns.PROSPECT -> prospect(log.prospect());
            case Columns.GAME -> game.name();
            case Columns.DATE -> game.date().map(Object::toString).orElse("");
            case Columns.LEVEL -> game.level();
            case Columns.OPPONENT -> game.opponent();
            case Columns.EVALUATOR -> log.evaluator();
            case Columns.NOT_SEEN -> hidden(reading, left);
            default ->
                column.kind() == Column.Kind.EXCHANGE
                        ? exchange(reading.exchange())
                        : String.join(";", reading.all(column.name()));
        };
    }

    private static String hidden(Reading reading, Set<String> left) {
        Set<String> hidden = new LinkedHashSet<>(reading.all(Columns.NOT_SEEN));
        hidden.addAll(left);
        return String.join(";", hidden);
    }

    /** His name where it makes his id, else the id: either leads back to him. */
    private static String prospect(Prospect prospect) {
        return Identity.slug(prospect.name()).equals(prospect.id()) ? prospect.name() : prospect.id();
    }

    private static String exchange(List<Step> steps) {
        return steps.stream().map(FilmLogWriter::step).collect(Collectors.joining(" > "));
    }

    private static String step(Step step) {
        return step.by() == Step.By.BLOCKER
                ? "[" + step.concept() + "]"
                : step.concept() + step.hand().map(hand -> "@" + hand).orElse("");
    }
}
