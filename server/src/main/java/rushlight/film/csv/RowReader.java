package rushlight.film.csv;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Step;
import rushlight.knowledge.Column;
import rushlight.knowledge.Taxonomy;

/** Reads the cells of one row. */
final class RowReader {
    private final ColumnReaders readers;
    private final AlignmentReader alignments;
    private final ExchangeReader exchanges;
    private final RowChecks checks;

    RowReader(Taxonomy taxonomy) {
        this.readers = new ColumnReaders(taxonomy);
        this.alignments =
                new AlignmentReader(taxonomy, readers.vocabulary(Columns.ALIGNMENT), readers.of(Columns.ALIGNMENT));
        this.exchanges = new ExchangeReader(taxonomy);
        this.checks = new RowChecks(taxonomy);
    }

    /** What the row says, its alignment in the numbering system it names, else in the given one. */
    Draft read(Header header, CsvRows.Row row, Optional<String> numbering, RowNotes notes) {
        Map<String, String> texts = new HashMap<>();
        Map<String, List<String>> tags = new HashMap<>();
        Draft draft = new Draft(texts, tags, List.of());
        if (row.cells().size() != header.size()) {
            notes.fault("", "", Fault.Code.CELL_COUNT, cellCount(row.cells().size(), header.size()));
            return draft;
        }
        List<Step> exchange = List.of();
        String alignment = "";
        for (int i = 0; i < row.cells().size(); i++) {
            Optional<Column> known = header.at(i);
            if (known.isEmpty()) {
                continue;
            }
            Column column = known.get();
            String cell = cell(column, row.cells().get(i));
            if (cell.isEmpty()) {
                blank(column, notes);
            } else if (isClean(column.name(), cell, notes)) {
                if (column.kind() == Column.Kind.EXCHANGE) {
                    exchange = exchanges.read(cell, notes);
                } else if (column.name().equals(Columns.ALIGNMENT)) {
                    alignment = cell;
                } else {
                    keep(column, readers.read(column, cell, notes), texts, tags);
                }
            }
        }
        if (!alignment.isEmpty()) {
            Optional<String> system = draft.one(Columns.NUMBERING).or(() -> numbering);
            alignments.read(alignment, system, notes).ifPresent(slug -> tags.put(Columns.ALIGNMENT, List.of(slug)));
        }
        checks.check(tags, notes);
        return new Draft(texts, tags, exchange);
    }

    private static void keep(
            Column column, List<String> values, Map<String, String> texts, Map<String, List<String>> tags) {
        if (values.isEmpty()) {
            return;
        }
        if (Columns.OF_THE_LOG.contains(column.name())) {
            texts.put(column.name(), values.get(0));
        } else {
            tags.put(column.name(), values);
        }
    }

    private static String cell(Column column, String cell) {
        if (column.name().equals(Columns.NOTE)) {
            return cell;
        }
        String text = cell.strip();
        return Columns.OF_THE_LOG.contains(column.name()) && hasRunOfBlanks(text) ? text.replaceAll("\\s+", " ") : text;
    }

    private static boolean hasRunOfBlanks(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean second = c == ' ' && i > 0 && text.charAt(i - 1) == ' ';
            if (second || (c != ' ' && Character.isWhitespace(c))) {
                return true;
            }
        }
        return false;
    }

    private void blank(Column column, RowNotes notes) {
        if (column.required()) {
            String words = column.oneOf().isEmpty() ? "" : " Write " + Sentences.or(column.oneOf()) + ".";
            notes.fault(column.name(), "", Fault.Code.BLANK, "every row needs a value here." + words);
        }
    }

    static String cellCount(int cells, int header) {
        return "this row has " + cells + " cells and the header " + header
                + "; look for a comma or a quote too many or too few.";
    }

    /** Whether a cell holds nothing but text. */
    static boolean isClean(String column, String cell, RowNotes notes) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            boolean blank = c == '\t' || c == '\n' || c == '\r';
            if ((c < ' ' && !blank) || c == '\u007F' || c >= '\uFFFE') {
                notes.fault(
                        column,
                        "",
                        Fault.Code.CONTROL_CHARACTER,
                        "a control character (number " + (int) c + ") stands at place " + (i + 1)
                                + " of the cell; take it out.");
                return false;
            }
        }
        return true;
    }
}
