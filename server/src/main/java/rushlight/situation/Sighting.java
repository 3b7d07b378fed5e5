package rushlight.situation;

import java.util.Optional;
import java.util.OptionalInt;
import rushlight.film.Reading;

/**
 * Where a rep is to be seen again.
 *
 * @param rep the evaluator's name for it
 * @param game name of the game
 * @param quarter quarter of the game
 * @param clock time left in the quarter, as written
 * @param video file name or address of the film
 * @param start where it starts on the film, as written
 * @param end where it ends on the film, as written
 */
public record Sighting(
        String rep,
        String game,
        OptionalInt quarter,
        Optional<String> clock,
        Optional<String> video,
        Optional<String> start,
        Optional<String> end) {
    /** Where this reading's rep is to be seen. */
    public static Sighting of(Reading reading, String game) {
        return new Sighting(
                reading.rep().rep(),
                game,
                reading.number("quarter"),
                reading.one("clock"),
                reading.one("video"),
                reading.one("start"),
                reading.one("end"));
    }
}
