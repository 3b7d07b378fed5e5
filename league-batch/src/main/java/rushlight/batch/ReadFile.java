package rushlight.batch;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.Serializable;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.input.PortableDataStream;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.FilmLogWriter;
import rushlight.film.csv.ReadResult;
import scala.Tuple2;

/**
 * A film log file that was read: its logs, or what is wrong with it. Logs travel as CSV, for that is written and read back
 * without loss.
 *
 * @param pieces the logs in order; none where the file has a fault
 * @param faults each fault as a line that names the file
 */
record ReadFile(List<Piece> pieces, List<String> faults) implements Serializable {
    /**
     * One log.
     *
     * @param prospect the id of whose film it is
     * @param file the address of the file it stands in
     * @param place its place there, from 0
     * @param csv the log
     */
    record Piece(String prospect, String file, int place, String csv) implements Serializable {}

    static ReadFile of(String address, PortableDataStream stream) throws IOException {
        String name = address.substring(address.lastIndexOf('/') + 1);
        ReadResult result = FilmLogReader.of(SharedBook.book().taxonomy())
                .read(name, new ByteArrayInputStream(stream.toArray()), FilmLogReader.Options.none());
        if (result instanceof ReadResult.Rejected rejected) {
            return new ReadFile(
                    List.of(),
                    rejected.faults().stream()
                            .map(fault -> name + ": " + fault.text())
                            .toList());
        }
        FilmLogWriter writer = FilmLogWriter.of(SharedBook.book().taxonomy().film());
        List<Piece> pieces = new ArrayList<>();
        for (Log log : ((ReadResult.Accepted) result).logs()) {
            StringWriter csv = new StringWriter();
            writer.write(List.of(log), csv);
            pieces.add(new Piece(log.prospect().id(), address, pieces.size(), csv.toString()));
        }
        return new ReadFile(pieces, List.of());
    }

    Iterator<Tuple2<String, Piece>> byProspect() {
        return pieces.stream()
                .map(piece -> new Tuple2<>(piece.prospect(), piece))
                .iterator();
    }
}
