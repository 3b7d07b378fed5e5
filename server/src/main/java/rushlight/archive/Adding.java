package rushlight.archive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rushlight.film.GameOrder;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Reading;
import rushlight.store.LogGraph;
import rushlight.store.Store;

/**
 * Keeps the readings of a stored log that a new one does not mention. The two may have charted different columns: what
 * a reading's own file did not chart becomes not seen on that reading, so that looked-and-found-nothing stays apart from
 * never-looked.
 */
final class Adding {
    private static final String NOT_SEEN = "not_seen";

    private Adding() {}

    /**
     * Logs by what they are of; those of one file that belong together become one.
     *
     * @param add keep stored readings whose rep the new log does not name
     */
    static Map<LogId, Log> byId(List<Log> logs, boolean add, Store store) {
        Map<LogId, Log> byId = new LinkedHashMap<>();
        for (Log log : logs) {
            byId.merge(LogGraph.idOf(log), log, Adding::to);
        }
        if (add) {
            byId.replaceAll(
                    (id, log) -> store.log(id).map(stored -> to(stored, log)).orElse(log));
        }
        return byId;
    }

    static Log to(Log stored, Log more) {
        Set<String> charted = new HashSet<>(stored.charted());
        charted.addAll(more.charted());
        Set<String> named = more.readings().stream().map(r -> r.rep().rep()).collect(Collectors.toSet());
        List<Reading> readings = new ArrayList<>();
        for (Reading old : stored.readings()) {
            if (!named.contains(old.rep().rep())) {
                readings.add(hiding(old, missing(charted, stored.charted())));
            }
        }
        more.readings().forEach(r -> readings.add(hiding(r, missing(charted, more.charted()))));
        return new Log(more.evaluator(), more.prospect(), more.game(), charted, GameOrder.of(readings), more.source());
    }

    private static Set<String> missing(Set<String> all, Set<String> charted) {
        Set<String> missing = new TreeSet<>(all);
        missing.removeAll(charted);
        missing.remove(NOT_SEEN);
        return missing;
    }

    private static Reading hiding(Reading reading, Set<String> columns) {
        if (columns.isEmpty()) {
            return reading;
        }
        Set<String> hidden = new TreeSet<>(reading.all(NOT_SEEN));
        hidden.addAll(columns);
        Map<String, List<String>> tags = new HashMap<>(reading.tags());
        tags.put(NOT_SEEN, List.copyOf(hidden));
        return new Reading(reading.rep(), reading.evaluator(), tags, reading.exchange());
    }
}
