package rushlight.store;

import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Reading;

/**
 * A change that was made, with what it took away.
 *
 * @param revision its number
 * @param when when it was made
 * @param kind what kind it was, as stored; empty where nothing was told
 * @param said one sentence for people; empty where nothing was told
 * @param by name of the account it was made with; empty where there was none
 * @param undoes the revision it took back
 * @param changed the logs it touched
 * @param before readings that went or changed, as they were
 * @param after readings that came or changed
 * @param fresh logs that were not there before
 * @param heads logs that went, or whose head changed, as they were and without readings
 */
public record PastChange(
        long revision,
        Instant when,
        String kind,
        String said,
        String by,
        OptionalLong undoes,
        Set<LogId> changed,
        List<Before> before,
        Set<After> after,
        Set<LogId> fresh,
        List<Log> heads) {
    /**
     * A reading as it was.
     *
     * @param log the log it stood in
     * @param order its place in the log, from 0
     * @param reading what it said
     */
    public record Before(LogId log, int order, Reading reading) {}

    /** A reading that came or changed, by its log and the name of its rep. */
    public record After(LogId log, String rep) {}

    public PastChange {
        changed = Set.copyOf(changed);
        before = List.copyOf(before);
        after = Set.copyOf(after);
        fresh = Set.copyOf(fresh);
        heads = List.copyOf(heads);
    }

    /** Whether anything of it can be taken back. */
    public boolean hasContent() {
        return !before.isEmpty() || !after.isEmpty() || !fresh.isEmpty() || !heads.isEmpty();
    }
}
