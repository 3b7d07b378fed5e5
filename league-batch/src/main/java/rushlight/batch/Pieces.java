package rushlight.batch;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.stream.StreamSupport;
import rushlight.archive.Book;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.findings.Assessment;
import rushlight.web.AssessAnswer;
import rushlight.web.Beside;
import rushlight.web.Json;

/** The logs of one prospect, gathered from wherever they were read. */
final class Pieces {
    private static final Comparator<ReadFile.Piece> AS_ON_ONE_MACHINE =
            Comparator.comparing(ReadFile.Piece::file).thenComparing(ReadFile.Piece::place);

    private Pieces() {}

    /** What they say of him, as JSON. */
    static String assessment(Iterable<ReadFile.Piece> pieces) {
        Book book = SharedBook.book();
        FilmLogReader reader = FilmLogReader.of(book.taxonomy());
        List<Log> logs = StreamSupport.stream(pieces.spliterator(), false)
                .sorted(AS_ON_ONE_MACHINE)
                .flatMap(piece -> logs(reader, piece).stream())
                .toList();
        List<Assessment> one = book.assess(logs);
        return Json.text(AssessAnswer.of(one.get(0), Beside.NOTHING, true)).stripTrailing();
    }

    private static List<Log> logs(FilmLogReader reader, ReadFile.Piece piece) {
        ReadResult result = reader.read(
                piece.file(),
                new ByteArrayInputStream(piece.csv().getBytes(StandardCharsets.UTF_8)),
                FilmLogReader.Options.none());
        if (result instanceof ReadResult.Accepted accepted) {
            return accepted.logs();
        }
        throw new IllegalStateException("A log of " + piece.file() + " does not read back: "
                + ((ReadResult.Rejected) result).faults().get(0).text());
    }
}
