package rushlight.film.csv;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes rows that nobody has read yet as CSV, such as reps proposed from notes, safe to open in a spreadsheet. */
public final class RowsWriter {
    private final CSVPrinter printer;

    private RowsWriter(CSVPrinter printer) {
        this.printer = printer;
    }

    /** Writes the header, and each row as it comes. */
    public static RowsWriter begun(List<String> header, Appendable out) throws IOException {
        RowsWriter writer = new RowsWriter(new CSVPrinter(out, CSVFormat.RFC4180));
        writer.printer.printRecord(header);
        return writer;
    }

    /** Writes the header and the rows, each with a cell for every column of the header. */
    public static void write(List<String> header, List<List<String>> rows, Appendable out) throws IOException {
        RowsWriter writer = begun(header, out);
        for (List<String> row : rows) {
            writer.write(row);
        }
    }

    /** Writes one row, with a cell for every column of the header. */
    public void write(List<String> row) throws IOException {
        printer.printRecord(row.stream().map(SafeCell::written).toList());
    }
}
