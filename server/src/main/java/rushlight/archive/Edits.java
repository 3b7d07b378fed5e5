package rushlight.archive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.Lock;
import java.util.function.Supplier;
import rushlight.film.GameOrder;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Reading;
import rushlight.store.Change;
import rushlight.store.LogGraph;
import rushlight.store.Store;

/**
 * Changes one rep at a time. Whoever changes a reading names the version he saw; if it is another one by now, nothing is
 * changed and he gets the other back. What was there before is kept, so every change can be taken back.
 */
public final class Edits {
    private final Book book;
    private final Store store;
    private final Writing writing;
    private final Lock one;

    Edits(Book book, Store store, Writing writing, Lock one) {
        this.book = book;
        this.store = store;
        this.writing = writing;
        this.one = one;
    }

    /** The same with somebody's account: his name stands with every change. */
    public Edits by(String name) {
        return new Edits(book, store, writing.by(name), one);
    }

    /** A reading as it is now. */
    public Optional<KeptReading> reading(LogId log, String rep) {
        return store.log(log).flatMap(stored -> find(stored, rep).map(found -> kept(stored, found)));
    }

    /**
     * Puts one reading in the place of another of the same log.
     *
     * @param rep name of the rep whose reading is replaced
     * @param version the version that was seen
     * @param typed a log of the new reading, with the list columns that were looked at
     */
    public EditResult edit(LogId log, String rep, String version, Log typed) {
        return alone(() -> {
            Optional<Log> stored = store.log(log);
            Optional<Reading> old = stored.flatMap(its -> find(its, rep));
            if (stored.isEmpty() || old.isEmpty()) {
                return new EditResult.Missing();
            }
            if (!ReadingVersion.of(old.get()).equals(version)) {
                return new EditResult.Stale(kept(stored.get(), old.get()));
            }
            Reading now = typed.readings().get(0);
            if (!sameRep(rep, now.rep().rep())
                    && find(stored.get(), now.rep().rep()).isPresent()) {
                return taken(now);
            }
            Log next = Adding.to(replacing(stored.get(), old.get(), now), looked(typed, stored.get(), now));
            return done(log, next, Change.Kind.EDIT, "Changed " + told(now, stored.get()) + ".", now);
        });
    }

    /** Adds a reading, and its log where there is none. */
    public EditResult add(Log typed) {
        return alone(() -> {
            LogId id = LogGraph.idOf(typed);
            Reading now = typed.readings().get(0);
            Optional<Log> stored = store.log(id);
            if (stored.flatMap(its -> find(its, now.rep().rep())).isPresent()) {
                return taken(now);
            }
            List<String> reasons = Clashes.of(List.of(typed), List.of(), store);
            if (!reasons.isEmpty()) {
                return new EditResult.Refused(reasons);
            }
            Log next = stored.map(its -> Adding.to(its, looked(typed, its, now)))
                    .map(its -> stored.map(old -> under(its, old)).orElse(its))
                    .orElse(typed);
            return done(id, next, Change.Kind.ADD, "Added " + told(now, next) + ".", now);
        });
    }

    /**
     * Takes a reading out; the log goes with its last one.
     *
     * @param version the version that was seen; empty takes out whatever is there
     */
    public EditResult remove(LogId log, String rep, Optional<String> version) {
        return alone(() -> {
            Optional<Log> stored = store.log(log);
            Optional<Reading> old = stored.flatMap(its -> find(its, rep));
            if (stored.isEmpty() || old.isEmpty()) {
                return new EditResult.Missing();
            }
            if (version.isPresent() && !ReadingVersion.of(old.get()).equals(version.get())) {
                return new EditResult.Stale(kept(stored.get(), old.get()));
            }
            List<Reading> rest = new ArrayList<>(stored.get().readings());
            rest.remove(old.get());
            Change.Note note = Change.Note.of(Change.Kind.REMOVE, "Removed " + told(old.get(), stored.get()) + ".");
            long revision = rest.isEmpty()
                    ? writing.write(List.of(), List.of(log), List.of(), note)
                    : writing.write(List.of(with(stored.get(), rest)), List.of(), List.of(), note);
            return new EditResult.Done(revision, note.said(), Optional.empty());
        });
    }

    /**
     * Takes a change back, or brings back one that was taken back.
     *
     * @param revision which change; empty for the last that was not taken back yet
     */
    public EditResult undo(Optional<Long> revision) {
        return alone(() -> new Undoing(store, writing).undo(revision));
    }

    private EditResult done(LogId id, Log next, Change.Kind kind, String said, Reading now) {
        long revision = writing.write(List.of(next), List.of(), List.of(), Change.Note.of(kind, said));
        Optional<KeptReading> kept = reading(id, now.rep().rep());
        return new EditResult.Done(revision, said, kept);
    }

    EditResult alone(Supplier<EditResult> work) {
        one.lock();
        try {
            return work.get();
        } finally {
            one.unlock();
        }
    }

    private KeptReading kept(Log log, Reading reading) {
        return new KeptReading(
                log, reading, book.rules().classify(reading, log.charted()).tagged(Book.REP_CLASS));
    }

    private static EditResult taken(Reading now) {
        return new EditResult.Refused(List.of("This evaluator has a rep \""
                + now.rep().rep() + "\" of this prospect and game already. Give one of them another name."));
    }

    private static String told(Reading reading, Log log) {
        return reading.rep().rep() + " of " + log.prospect().name() + ", "
                + log.game().name();
    }

    private static Optional<Reading> find(Log log, String rep) {
        return log.readings().stream()
                .filter(reading -> sameRep(reading.rep().rep(), rep))
                .findFirst();
    }

    private static boolean sameRep(String one, String other) {
        return Identity.slug(one).equals(Identity.slug(other));
    }

    /** What was typed, with the list columns of its log counted as looked at. */
    private static Log looked(Log typed, Log stored, Reading now) {
        Set<String> charted = new HashSet<>(stored.charted());
        charted.addAll(typed.charted());
        return new Log(stored.evaluator(), stored.prospect(), stored.game(), charted, List.of(now), stored.source());
    }

    private static Log replacing(Log log, Reading old, Reading now) {
        List<Reading> readings = new ArrayList<>(log.readings());
        readings.set(readings.indexOf(old), now);
        return with(log, readings);
    }

    /** The same log as another one, but for its readings and what was charted. */
    private static Log under(Log log, Log head) {
        return new Log(head.evaluator(), head.prospect(), head.game(), log.charted(), log.readings(), head.source());
    }

    private static Log with(Log log, List<Reading> readings) {
        return new Log(
                log.evaluator(), log.prospect(), log.game(), log.charted(), GameOrder.of(readings), log.source());
    }
}
