package rushlight.film.csv;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.film.Game;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.Step;
import rushlight.knowledge.Column;
import rushlight.knowledge.FilmColumns;

/** A reading as the cells of its row. */
public final class Cells {
    private Cells() {}

    /**
     * The cells that are not blank, by column, in the order of the header.
     *
     * @param log the log the reading stands in; its own readings do not matter
     */
    public static Map<String, String> of(Log log, Reading reading, FilmColumns film) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (Column column : film.all()) {
            String cell = of(column, log, reading, Set.of());
            if (!cell.isEmpty()) {
                cells.put(column.name(), cell);
            }
        }
        return cells;
    }

    /** The cells of a reading alone, without those that its log holds. */
    public static Map<String, String> ofReading(Reading reading, FilmColumns film) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (Column column : film.all()) {
            String cell = column.kind() == Column.Kind.EXCHANGE
                    ? exchange(reading)
                    : String.join(";", reading.all(column.name()));
            if (!cell.isEmpty()) {
                cells.put(column.name(), cell);
            }
        }
        return cells;
    }

    /** The exchange as one cell. */
    public static String exchange(Reading reading) {
        return reading.exchange().stream().map(Cells::step).collect(Collectors.joining(" > "));
    }

    /**
     * One cell.
     *
     * @param left list columns that the log left out though others in the file have them
     */
    static String of(Column column, Log log, Reading reading, Set<String> left) {
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
                        ? exchange(reading)
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

    private static String step(Step step) {
        return step.by() == Step.By.BLOCKER
                ? "[" + step.concept() + "]"
                : step.concept() + step.hand().map(hand -> "@" + hand).orElse("");
    }
}
