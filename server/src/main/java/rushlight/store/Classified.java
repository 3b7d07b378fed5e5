package rushlight.store;

import java.util.List;
import java.util.Set;
import rushlight.film.Log;

/**
 * A log with what the rules conclude of its readings.
 *
 * @param log the log
 * @param classes rep classes of each reading, in the order of the readings
 */
public record Classified(Log log, List<Set<String>> classes) {
    public Classified {
        classes = List.copyOf(classes);
        if (classes.size() != log.readings().size()) {
            throw new IllegalArgumentException(
                    classes.size() + " sets of classes for " + log.readings().size() + " readings.");
        }
    }
}
