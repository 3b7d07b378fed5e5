package rushlight.web.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rushlight.archive.Book;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Reading;
import rushlight.film.Times;
import rushlight.film.csv.Cells;
import rushlight.knowledge.Column;
import rushlight.knowledge.Taxonomy;
import rushlight.words.NearestLabels;

/** Which rows of the film log are asked for, and in which order. */
final class RowQuery {
    /** A row with the log it stands in. */
    record Row(Log log, Reading reading) {}

    private record Where(String column, String value) {}

    /** Every rule class can be asked for like a column. */
    private static final String CLASS = "class";

    private static final String EXCHANGE = "exchange";

    private final Taxonomy taxonomy;
    private final Book book;
    private final Optional<String> prospect;
    private final Optional<String> game;
    private final Optional<String> evaluator;
    private final Optional<String> words;
    private final List<Where> where = new ArrayList<>();
    private final Optional<String> sort;

    RowQuery(Context ctx, Book book) {
        this.book = book;
        this.taxonomy = book.taxonomy();
        this.prospect = Request.word(ctx, "prospect");
        this.game = Request.word(ctx, "game");
        this.evaluator = Request.word(ctx, "evaluator").map(Identity::slug);
        this.words = Request.word(ctx, "q").map(text -> text.toLowerCase(Locale.ROOT));
        this.sort = Request.word(ctx, "sort");
        sort.ifPresent(name -> check(name.startsWith("-") ? name.substring(1) : name, "sort"));
        for (String text : ctx.queryParams("where")) {
            int colon = text.indexOf(':');
            if (colon < 1) {
                throw Problem.of(400, "\"where\" is a column, a colon and a value, such as result:won.")
                        .thrown();
            }
            String column = text.substring(0, colon);
            if (!column.equals(CLASS)) {
                check(column, "where");
            }
            where.add(new Where(column, text.substring(colon + 1)));
        }
    }

    private void check(String column, String parameter) {
        if (taxonomy.film().named(column).isEmpty()) {
            List<String> names =
                    taxonomy.film().all().stream().map(Column::name).toList();
            throw Problem.of(400, "\"" + parameter + "\" names a column \"" + column + "\", which no film log has.")
                    .withNearest(NearestLabels.words(names).to(column, 3))
                    .thrown();
        }
    }

    /** Whether a log can hold such rows. */
    boolean wants(LogId id) {
        return prospect.filter(p -> !p.equals(id.prospect())).isEmpty()
                && game.filter(g -> !g.equals(id.game())).isEmpty()
                && evaluator.filter(e -> !e.equals(id.evaluator())).isEmpty();
    }

    /** Whether every row of a log is wanted, as it stands. */
    boolean wantsWholeLogs() {
        return words.isEmpty() && where.isEmpty() && sort.isEmpty();
    }

    /** The rows that are wanted, in order. */
    List<Row> of(Stream<Log> logs) {
        List<Row> rows = logs.flatMap(log -> log.readings().stream().map(reading -> new Row(log, reading)))
                .filter(this::fits)
                .toList();
        return sort.map(name -> sorted(rows, name)).orElse(rows);
    }

    private boolean fits(Row row) {
        return where.stream().allMatch(one -> fits(row, one))
                && words.filter(text -> !says(row, text)).isEmpty();
    }

    private boolean fits(Row row, Where one) {
        if (one.column().equals(CLASS)) {
            return book.rules()
                    .classify(row.reading(), row.log().charted())
                    .tagged("repClass")
                    .contains(one.value());
        }
        if (one.column().equals(EXCHANGE)) {
            return row.reading().exchange().stream().anyMatch(step -> taxonomy.isA(step.concept(), one.value()));
        }
        if (row.reading().all(one.column()).stream().anyMatch(value -> taxonomy.isA(value, one.value()))) {
            return true;
        }
        return one.value().equals(cells(row).getOrDefault(one.column(), ""));
    }

    /** Whether the words stand in a cell, as they are written there or as the labels of what is written. */
    private boolean says(Row row, String text) {
        return Stream.concat(
                        cells(row).values().stream(),
                        Stream.concat(
                                        row.reading().tags().values().stream().flatMap(List::stream),
                                        row.reading().exchange().stream().map(step -> step.concept()))
                                .map(taxonomy::label))
                .anyMatch(cell -> cell.toLowerCase(Locale.ROOT).contains(text));
    }

    private List<Row> sorted(List<Row> rows, String name) {
        boolean isFalling = name.startsWith("-");
        String column = isFalling ? name.substring(1) : name;
        Column.Kind kind = taxonomy.film().named(column).orElseThrow().kind();
        Comparator<Row> order = switch (kind) {
            case INTEGER -> Comparator.comparingDouble(row -> number(cell(row, column)));
            case TIME, CLOCK -> Comparator.comparingDouble(row -> seconds(cell(row, column)));
            default -> Comparator.comparing(row -> cell(row, column));
        };
        Comparator<Row> blanksLast =
                Comparator.comparing(row -> cell(row, column).isEmpty());
        return rows.stream()
                .sorted(blanksLast.thenComparing(isFalling ? order.reversed() : order))
                .toList();
    }

    private String cell(Row row, String column) {
        return cells(row).getOrDefault(column, "");
    }

    private Map<String, String> cells(Row row) {
        return Cells.of(row.log(), row.reading(), taxonomy.film());
    }

    private static double number(String text) {
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    private static double seconds(String text) {
        OptionalDouble seconds = Times.seconds(text);
        return seconds.orElse(0);
    }
}
