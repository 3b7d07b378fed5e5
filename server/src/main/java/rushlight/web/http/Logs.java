package rushlight.web.http;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.store.Store;

/** The logs that were looked at last, so that paging through them does not read them again; never an old one. */
final class Logs {
    private static final int MOST = 400;

    private final Store store;
    private final Map<LogId, Log> recent = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<LogId, Log> eldest) {
            return size() > MOST;
        }
    };
    private long revision;

    Logs(Store store) {
        this.store = store;
    }

    /** A log as it is now. */
    synchronized Optional<Log> log(LogId id) {
        long now = store.revision();
        if (now != revision) {
            store.changedSince(revision).forEach(recent::remove);
            revision = now;
        }
        Log known = recent.get(id);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<Log> read = store.log(id);
        read.ifPresent(log -> recent.put(id, log));
        return read;
    }
}
