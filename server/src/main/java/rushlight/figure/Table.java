package rushlight.figure;

import java.util.List;

/**
 * The table behind a drawing.
 *
 * @param caption what the table tells
 * @param columns the heads of the columns
 * @param rows one list a row, as long as {@code columns}
 */
public record Table(String caption, List<String> columns, List<List<String>> rows) {
    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
