package rushlight.film.csv;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes rows that nobody has read yet as CSV, such as reps proposed from notes, safe to open in a spreadsheet. */
public final class RowsWriter {
    private RowsWriter() {}

    /** Writes the header and the rows, each with a cell for every column of the header. */
    public static void write(List<String> header, List<List<String>> rows, Appendable out) throws IOException {
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(header);
        for (List<String> row : rows) {
            printer.printRecord(row.stream().map(SafeCell::written).toList());
        }
    }
}
