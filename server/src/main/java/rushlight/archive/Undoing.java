package rushlight.archive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import rushlight.film.GameOrder;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Reading;
import rushlight.store.Change;
import rushlight.store.LogGraph;
import rushlight.store.PastChange;
import rushlight.store.Store;

/** Takes a change back, unless something newer was built on it. */
final class Undoing {
    private static final String UNDO = Change.Kind.UNDO.slug();

    private final Store store;
    private final Writing writing;

    Undoing(Store store, Writing writing) {
        this.store = store;
        this.writing = writing;
    }

    EditResult undo(Optional<Long> revision) {
        List<PastChange> newer = new ArrayList<>();
        Optional<PastChange> found = store.history(changes -> found(changes.iterator(), revision, newer));
        if (found.isEmpty()) {
            return new EditResult.Missing();
        }
        PastChange change = found.get();
        List<String> reasons = reasons(change, newer);
        return reasons.isEmpty() ? undo(change) : new EditResult.Refused(reasons);
    }

    /** The changes that were taken back and not brought back since. */
    static Set<Long> undone(List<PastChange> newestFirst) {
        Set<Long> undone = new HashSet<>();
        for (PastChange change : newestFirst) {
            if (change.undoes().isPresent() && !undone.contains(change.revision())) {
                undone.add(change.undoes().getAsLong());
            }
        }
        return undone;
    }

    private static Optional<PastChange> found(
            java.util.Iterator<PastChange> changes, Optional<Long> revision, List<PastChange> newer) {
        while (changes.hasNext()) {
            PastChange change = changes.next();
            boolean isIt = revision.isPresent()
                    ? change.revision() == revision.get()
                    : change.hasContent()
                            && !change.kind().equals(UNDO)
                            && !undone(newer).contains(change.revision());
            if (isIt) {
                return Optional.of(change);
            }
            newer.add(change);
        }
        return Optional.empty();
    }

    private static List<String> reasons(PastChange change, List<PastChange> newer) {
        if (!change.hasContent()) {
            return List.of("Change " + change.revision() + " took nothing away that could be brought back.");
        }
        if (undone(newer).contains(change.revision())) {
            return List.of("Change " + change.revision() + " was taken back already.");
        }
        Set<PastChange.After> mine = readings(change);
        List<String> reasons = new ArrayList<>();
        for (PastChange later : newer) {
            boolean isOnTop = readings(later).stream().anyMatch(mine::contains)
                    || later.changed().stream().anyMatch(change.fresh()::contains)
                    || later.fresh().stream().anyMatch(change.changed()::contains);
            if (isOnTop && !isTakenBack(later, newer)) {
                reasons.add(
                        "Change " + later.revision() + " came after it: " + later.said() + " Take that back first.");
            }
        }
        return reasons;
    }

    /** A change and what took it back leave everything as it was. */
    private static boolean isTakenBack(PastChange change, List<PastChange> newer) {
        Set<Long> undone = undone(newer);
        return undone.contains(change.revision())
                || (change.undoes().isPresent()
                        && newer.stream()
                                .anyMatch(c -> c.revision() == change.undoes().getAsLong()));
    }

    private static Set<PastChange.After> readings(PastChange change) {
        Set<PastChange.After> all = new HashSet<>(change.after());
        change.before()
                .forEach(b ->
                        all.add(new PastChange.After(b.log(), b.reading().rep().rep())));
        return all;
    }

    private EditResult undo(PastChange change) {
        Map<LogId, Log> heads = new LinkedHashMap<>();
        change.heads().forEach(head -> heads.put(LogGraph.idOf(head), head));
        Set<LogId> touched = new LinkedHashSet<>(heads.keySet());
        change.before().forEach(before -> touched.add(before.log()));
        change.after().forEach(after -> touched.add(after.log()));
        touched.removeAll(change.fresh());
        List<Log> logs = new ArrayList<>();
        Set<LogId> gone = new HashSet<>(change.fresh());
        for (LogId id : touched) {
            Optional<Log> now = store.log(id);
            Log head = Optional.ofNullable(heads.get(id)).or(() -> now).orElseThrow();
            List<Reading> readings = readings(id, change, now.map(Log::readings).orElse(List.of()));
            if (readings.isEmpty()) {
                gone.add(id);
            } else {
                logs.add(new Log(
                        head.evaluator(),
                        head.prospect(),
                        head.game(),
                        head.charted(),
                        GameOrder.of(readings),
                        head.source()));
            }
        }
        String said = change.kind().equals(UNDO) ? "Brought back" : "Took back";
        Change.Note note =
                new Change.Note(Change.Kind.UNDO, said + ": " + change.said(), OptionalLong.of(change.revision()), "");
        long revision = writing.write(logs, gone, List.of(), note);
        return new EditResult.Done(revision, note.said(), Optional.empty());
    }

    private static List<Reading> readings(LogId id, PastChange change, List<Reading> now) {
        Set<String> out = new HashSet<>();
        change.after().stream().filter(after -> after.log().equals(id)).forEach(after -> out.add(after.rep()));
        List<Reading> readings = new ArrayList<>(now);
        readings.removeIf(reading -> out.contains(reading.rep().rep()));
        for (PastChange.Before before : change.before()) {
            if (before.log().equals(id)) {
                readings.add(Math.min(before.order(), readings.size()), before.reading());
            }
        }
        return readings;
    }
}
