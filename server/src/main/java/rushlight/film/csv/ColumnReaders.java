package rushlight.film.csv;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import rushlight.knowledge.Column;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;
import rushlight.words.Meaning;
import rushlight.words.Vocabulary;

/** Reads the cells of every column as the book describes it. */
final class ColumnReaders {
    private final Map<String, Vocabulary> vocabularies = new LinkedHashMap<>();
    private final Map<String, ValueReader> readers = new HashMap<>();
    private final Map<String, List<String>> singles = new ConcurrentHashMap<>();

    ColumnReaders(Taxonomy taxonomy) {
        for (Column column : taxonomy.film().all()) {
            if (column.kind() == Column.Kind.CONCEPT) {
                vocabularies.put(column.name(), vocabulary(taxonomy, column));
            }
        }
        taxonomy.film().all().forEach(column -> readers.put(column.name(), reader(column)));
    }

    /** The reader of single values of a column. */
    ValueReader of(String column) {
        return readers.getOrDefault(column, PlainReaders.text());
    }

    /** What a concept column may say. */
    Vocabulary vocabulary(String column) {
        return vocabularies.getOrDefault(column, Vocabulary.of(List.of()));
    }

    /** The values of a cell that is not blank; those at fault are left out and told. */
    List<String> read(Column column, String cell, RowNotes notes) {
        if (!column.list()) {
            return isSeveral(column, cell, notes)
                    ? List.of()
                    : of(column.name())
                            .read(cell, notes)
                            .map(value -> single(column, value))
                            .orElse(List.of());
        }
        Set<String> values = new LinkedHashSet<>();
        for (String part : cell.split(";", -1)) {
            if (!part.isBlank()) {
                of(column.name()).read(part.strip(), notes).ifPresent(values::add);
            }
        }
        return List.copyOf(values);
    }

    /** Slugs and words come again row after row: one list of each is enough. */
    private List<String> single(Column column, String value) {
        boolean known = column.kind() == Column.Kind.CONCEPT || column.kind() == Column.Kind.WORDS;
        return known ? singles.computeIfAbsent(value, List::of) : List.of(value);
    }

    private static boolean isSeveral(Column column, String cell, RowNotes notes) {
        boolean several = column.kind() != Column.Kind.TEXT && cell.indexOf(';') >= 0;
        if (several) {
            notes.fault(
                    column.name(),
                    cell,
                    Fault.Code.SEVERAL_VALUES,
                    "this column takes one value, and the cell lists more: \"" + cell + "\".");
        }
        return several;
    }

    private ValueReader reader(Column column) {
        return switch (column.kind()) {
            case TEXT, EXCHANGE -> PlainReaders.text();
            case INTEGER -> PlainReaders.integer(column);
            case DATE -> PlainReaders.date(column);
            case CLOCK -> PlainReaders.clock(column);
            case TIME -> PlainReaders.time(column);
            case WORDS -> new WordReader(column);
            case CONCEPT -> new ConceptReader(column.name(), vocabulary(column.name()), this::columnsThatKnow);
        };
    }

    private List<String> columnsThatKnow(String text) {
        List<String> columns = new ArrayList<>();
        vocabularies.forEach((name, vocabulary) -> {
            if (!(vocabulary.meaning(text) instanceof Meaning.None)) {
                columns.add(name);
            }
        });
        return columns;
    }

    private static Vocabulary vocabulary(Taxonomy taxonomy, Column column) {
        if (column.oneOf().isEmpty()) {
            return Vocabulary.of(taxonomy, column.classes(), column.narrowerThan());
        }
        Collection<Concept> listed = column.oneOf().stream()
                .map(taxonomy::concept)
                .flatMap(Optional::stream)
                .toList();
        return Vocabulary.of(listed);
    }
}
