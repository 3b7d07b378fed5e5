package rushlight.archive;

import java.util.Set;
import rushlight.film.Log;
import rushlight.film.Reading;

/**
 * A stored reading.
 *
 * @param log the log it stands in
 * @param reading what it says
 * @param classes what the rules conclude of it
 */
public record KeptReading(Log log, Reading reading, Set<String> classes) {
    public KeptReading {
        classes = Set.copyOf(classes);
    }
}
