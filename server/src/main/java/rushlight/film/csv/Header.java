package rushlight.film.csv;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.knowledge.Column;
import rushlight.knowledge.FilmColumns;
import rushlight.words.LabelKey;
import rushlight.words.NearestLabels;

/** The first row of a film log: which column stands where. */
final class Header {
    /** Column that an import adds to the rows it gives back; passed over when they come again. */
    static final String REASON = "reason";

    private final List<String> names;
    private final List<Optional<Column>> columns = new ArrayList<>();
    private final RowNotes notes;

    private Header(List<String> names, RowNotes notes) {
        this.names = names;
        this.notes = notes;
    }

    static Header read(CsvRows.Row row, FilmColumns film, RowNotes notes) {
        Header header = new Header(row.cells(), notes);
        if (isPartedOtherwise(row, notes)) {
            return header;
        }
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < row.cells().size(); i++) {
            String name = plain(row.cells().get(i));
            Optional<Column> column = film.named(name);
            header.columns.add(column);
            if (column.isPresent()) {
                Integer first = seen.putIfAbsent(name, i + 1);
                if (first != null) {
                    notes.fault(
                            name,
                            name,
                            Fault.Code.REPEATED_COLUMN,
                            "the column stands in the header twice, at " + first + " and " + (i + 1)
                                    + "; keep one of them.");
                }
            } else {
                header.unknown(row.cells().get(i).strip(), i + 1, film.all());
            }
        }
        film.all().stream()
                .filter(column -> column.required() && !seen.containsKey(column.name()))
                .forEach(column -> header.missing(column.name()));
        return header;
    }

    /** Whether something else than commas stands between the names of columns; told, where it does. */
    static boolean isPartedOtherwise(CsvRows.Row row, RowNotes notes) {
        String first = row.cells().get(0);
        boolean tabs = first.indexOf('\t') >= 0;
        if (row.cells().size() > 1 || (!tabs && first.indexOf(';') < 0)) {
            return false;
        }
        notes.fault(
                "",
                first,
                Fault.Code.NOT_CSV,
                "the column names are parted by " + (tabs ? "tabs" : "semicolons")
                        + "; save the sheet as CSV with commas.");
        return true;
    }

    int size() {
        return names.size();
    }

    /** The column at a place, counted from 0; empty where the header names none that is known. */
    Optional<Column> at(int place) {
        return columns.get(place);
    }

    /** The header as it was written. */
    List<String> names() {
        return names;
    }

    /** The list columns that were charted. */
    Set<String> charted() {
        return columns.stream()
                .flatMap(Optional::stream)
                .filter(Column::list)
                .map(Column::name)
                .filter(name -> !name.equals(Columns.NOT_SEEN))
                .collect(Collectors.toCollection(HashSet::new));
    }

    /** Whether rows can be read at all. */
    boolean isUsable() {
        return notes.faults().stream()
                .noneMatch(fault -> fault.code() == Fault.Code.MISSING_COLUMN || fault.code() == Fault.Code.NOT_CSV);
    }

    private void unknown(String name, int place, Collection<Column> film) {
        if (name.equals(REASON)) {
            notes.warn(
                    name,
                    name,
                    Fault.Code.PASSED_OVER,
                    "this column holds the reasons of an earlier import and is passed over.");
            return;
        }
        if (name.isEmpty()) {
            notes.fault(
                    "",
                    "",
                    Fault.Code.UNNAMED_COLUMN,
                    "column " + place + " has no name in the header; name it or take it out.");
            return;
        }
        List<String> near = near(name, film);
        notes.fault(
                name,
                name,
                Fault.Code.UNKNOWN_COLUMN,
                "a film log has no column \"" + name + "\"" + Sentences.didYouMean(near),
                near);
    }

    /** The column that others call by this name; where none is, those with a name like it. */
    private static List<String> near(String name, Collection<Column> film) {
        String key = LabelKey.of(name);
        List<String> called = film.stream()
                .filter(column -> column.otherNames().stream().map(LabelKey::of).anyMatch(key::equals))
                .map(Column::name)
                .toList();
        return called.isEmpty()
                ? NearestLabels.words(film.stream().map(Column::name).toList()).to(name, 3)
                : called;
    }

    private void missing(String name) {
        notes.fault(
                name,
                "",
                Fault.Code.MISSING_COLUMN,
                "the header lacks the column " + name + ", which every film log needs.");
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
    }
}
