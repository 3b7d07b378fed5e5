package rushlight.film.csv;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import rushlight.film.Prospect;

/** Writes a list of prospects that reads back the same. */
public final class ProspectsWriter {
    private ProspectsWriter() {}

    /** Writes the header and one row a prospect. */
    public static void write(Collection<Prospect> prospects, Appendable out) throws IOException {
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(
                ProspectsReader.ID,
                ProspectsReader.NAME,
                ProspectsReader.POSITION,
                Measure.HEIGHT.columns().get(0),
                Measure.WEIGHT.columns().get(0),
                Measure.ARM.columns().get(0),
                ProspectsReader.TEAM,
                ProspectsReader.CLASS_YEAR,
                ProspectsReader.NOTES);
        for (Prospect prospect : prospects) {
            printer.printRecord(cells(prospect));
        }
    }

    private static List<String> cells(Prospect prospect) {
        return Stream.of(
                        prospect.id(),
                        prospect.name(),
                        prospect.position(),
                        Measure.HEIGHT.written(prospect.heightCm()),
                        Measure.WEIGHT.written(prospect.weightKg()),
                        Measure.ARM.written(prospect.armCm()),
                        prospect.team(),
                        prospect.classYear(),
                        prospect.notes())
                .map(SafeCell::written)
                .toList();
    }
}
