package rushlight.archive;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.web.AssessAnswer;
import rushlight.web.Json;

/** A little film of Jory Penwick, and what an archive holds of it. */
final class PlayedFilm {
    private static final Book BOOK = Book.packaged();
    private static final String HEADER =
            "rep,prospect,game,opponent,phase,exchange,second_move_time,result,faults,evaluator\n";

    private PlayedFilm() {}

    static Set<String> film(Archive archive) {
        return archive.store().ask(data -> PlayedStore.lines(data.asDatasetGraph()));
    }

    static List<Log> stopped(String... reps) {
        StringBuilder rows = new StringBuilder();
        for (String rep : reps) {
            rows.append(rep)
                    .append(
                            ",Jory Penwick,Opener,Port Ellery,pass-rush,bull-rush > [anchor-hop],yes,lost,,First Eyes\n");
        }
        return logs(rows.toString());
    }

    static List<Log> logs(String rows) {
        ReadResult result = FilmLogReader.of(BOOK.taxonomy())
                .read(
                        "log.csv",
                        new ByteArrayInputStream((HEADER + rows).getBytes(StandardCharsets.UTF_8)),
                        FilmLogReader.Options.none());
        return ((ReadResult.Accepted) result).logs();
    }

    static List<String> reps(Archive archive) {
        return archive.logs().stream()
                .flatMap(log -> log.readings().stream())
                .map(reading -> reading.rep().rep())
                .toList();
    }

    static String json(Archive archive) {
        return Json.text(archive.assess().stream().map(AssessAnswer::of).toList());
    }

    static String bytes(Path folder) throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }

    static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        }
    }
}
