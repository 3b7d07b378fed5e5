package rushlight.situation;

import java.util.List;
import rushlight.film.Log;
import rushlight.film.RepFacts;

/**
 * A log with the facts of each of its readings.
 *
 * @param log as charted
 * @param facts one for each reading of the log, in its order, rep classes included
 */
public record LogFacts(Log log, List<RepFacts> facts) {
    public LogFacts {
        facts = List.copyOf(facts);
        if (facts.size() != log.readings().size()) {
            throw new IllegalArgumentException(
                    "A log of " + log.readings().size() + " readings cannot have the facts of " + facts.size() + ".");
        }
    }
}
