package rushlight.film.csv;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The rows that could not be used, as they stood, to be given back with the reasons.
 *
 * @param header the header of their file
 * @param rows the rows, in order
 */
public record BadRows(List<String> header, List<BadRow> rows) {
    /**
     * One row.
     *
     * @param line line of the file it started on
     * @param cells its cells
     * @param reasons what is wrong with it, in order of the columns
     */
    public record BadRow(int line, List<String> cells, List<Fault> reasons) {
        public BadRow {
            cells = List.copyOf(cells);
            reasons = List.copyOf(reasons);
        }
    }

    public BadRows {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /** No rows. */
    static BadRows none() {
        return new BadRows(List.of(), List.of());
    }

    /** Writes a CSV with the rows and one more column, the reasons; repaired, it can be imported as it is. */
    public void write(Appendable out) throws IOException {
        int reason = reasonPlace();
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
        print(printer, header, reason, Header.REASON);
        for (BadRow row : rows) {
            String reasons = String.join(
                    " ", row.reasons().stream().map(BadRows::sentence).toList());
            print(printer, row.cells(), reason, reasons);
        }
    }

    private int reasonPlace() {
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).strip().toLowerCase(Locale.ROOT).equals(Header.REASON)) {
                return i;
            }
        }
        return header.size();
    }

    private static String sentence(Fault fault) {
        return (fault.column().isEmpty() ? "" : fault.column() + ": ") + fault.message();
    }

    /** A row of the wrong length keeps it, so that it cannot pass for a good one when it comes again. */
    private void print(CSVPrinter printer, List<String> cells, int reason, String text) throws IOException {
        List<String> all = new ArrayList<>(cells);
        if (cells.size() == header.size() && reason < cells.size()) {
            all.set(reason, text);
        } else {
            all.add(text);
        }
        printer.printRecord(all.stream().map(SafeCell::written).toList());
    }
}
