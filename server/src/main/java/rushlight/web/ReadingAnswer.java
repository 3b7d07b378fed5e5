package rushlight.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.archive.ReadingVersion;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.film.csv.Cells;
import rushlight.knowledge.FilmColumns;
import rushlight.situation.Sighting;

/**
 * What one evaluator read of one rep.
 *
 * @param href where it is
 * @param log the log it stands in
 * @param etag names this version of it
 * @param cells its cells as they stand in the CSV, blank ones left out
 * @param classes what the rules conclude
 * @param seconds where it lies on film
 */
public record ReadingAnswer(
        String prospect,
        String game,
        String rep,
        String evaluator,
        String href,
        String log,
        String etag,
        Map<String, String> cells,
        List<String> classes,
        Optional<AssessAnswer.Seconds> seconds) {
    /**
     * A reading of a log.
     *
     * @param log its log; the log's own readings do not matter
     * @param classes what the rules conclude of it
     */
    public static ReadingAnswer of(Log log, Reading reading, Set<String> classes, FilmColumns film) {
        RepId rep = reading.rep();
        String evaluator = Identity.slug(reading.evaluator());
        return new ReadingAnswer(
                rep.prospect(),
                rep.game(),
                rep.rep(),
                evaluator,
                Addresses.reading(rep, evaluator),
                evaluator + "/" + rep.prospect() + "/" + rep.game(),
                "\"" + ReadingVersion.of(reading) + "\"",
                Cells.of(log, reading, film),
                classes.stream().sorted().toList(),
                AssessAnswer.Seconds.of(Sighting.of(reading, log.game().name())));
    }
}
