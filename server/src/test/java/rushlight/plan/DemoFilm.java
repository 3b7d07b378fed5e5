package rushlight.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rushlight.archive.Book;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.situation.Tape;
import rushlight.situation.Tapes;

/** Some men of the invented league, read and classified. */
record DemoFilm(Book book, List<Tape> tapes) {
    /** The film of these, by the names of their files. */
    static DemoFilm of(String... files) {
        Book book = Book.packaged();
        return new DemoFilm(
                book, tapes(book, Stream.of(files).map(DemoFilm::path).toList()));
    }

    static Path path(String file) {
        return Path.of("..", "demo-data", "logs", file + ".csv");
    }

    static List<Tape> tapes(Book book, List<Path> files) {
        FilmLogReader reader = FilmLogReader.of(book.taxonomy());
        List<Log> logs = new ArrayList<>();
        for (Path path : files) {
            if (!(reader.read(path, FilmLogReader.Options.none()) instanceof ReadResult.Accepted accepted)) {
                throw new IllegalStateException(path + " does not read.");
            }
            logs.addAll(accepted.logs());
        }
        return Tapes.of(logs.stream().map(book::classified).toList());
    }
}
