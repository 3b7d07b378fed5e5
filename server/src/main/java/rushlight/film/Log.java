package rushlight.film;

import java.util.List;
import java.util.Set;

/**
 * What one evaluator read of one prospect in one game.
 *
 * @param evaluator who read it
 * @param prospect whose film
 * @param game which game
 * @param charted list columns that stood in the header: blank there means looked, nothing to tag
 * @param readings one a rep, in the order of the game
 * @param source the file it came from
 */
public record Log(
        String evaluator, Prospect prospect, Game game, Set<String> charted, List<Reading> readings, Source source) {
    /**
     * Where a log came from.
     *
     * @param file name of the file, without its folder
     * @param sha256 digest of its bytes, lower-case hexadecimal
     */
    public record Source(String file, String sha256) {}

    public Log {
        charted = Set.copyOf(charted);
        readings = List.copyOf(readings);
    }
}
