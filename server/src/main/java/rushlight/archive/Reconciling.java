package rushlight.archive;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Reconciled;
import rushlight.store.Store;

/**
 * Settles between two evaluators what a rep was, column by column. What comes of it is a reading under the name of
 * {@link Reconciled}: it counts before theirs, theirs stay as they are, and it can be changed and taken back like any other.
 */
public final class Reconciling {
    private final Edits edits;
    private final Store store;
    private final Settling settling;

    private Reconciling(Edits edits, Store store, Settling settling) {
        this.edits = edits;
        this.store = store;
        this.settling = settling;
    }

    /** In an open folder. */
    public static Reconciling of(Archive archive) {
        return new Reconciling(archive.edits(), archive.store(), Settling.of(archive.book()));
    }

    /** The same with somebody's account. */
    public Reconciling by(String name) {
        return new Reconciling(edits.by(name), store, settling);
    }

    /**
     * One evaluator's reading as it was seen when the choice was made.
     *
     * @param log the log it stands in
     * @param version its version ({@link ReadingVersion})
     */
    public record Side(LogId log, String version) {}

    /** Whose word goes into the reconciled reading. */
    public enum Choice {
        FIRST,
        SECOND
    }

    /**
     * Puts a reconciled reading in place of the one there is, or adds it.
     *
     * @param rep name of the rep, the same with both
     * @param first one evaluator's reading
     * @param second the other's
     * @param settled version of the reconciled reading that was seen; empty where there was none
     * @param choices a choice by column name; a column without one is the first's, or the second's where the first says
     *     nothing there
     * @return {@link EditResult.Stale} with the reading that is another one by now, {@link EditResult.Missing} where one of
     *     the two is gone, {@link EditResult.Refused} where the readings are not of one rep or a column is not known
     */
    public EditResult settle(
            String rep, Side first, Side second, Optional<String> settled, Map<String, Choice> choices) {
        return edits.alone(() -> {
            Optional<KeptReading> one = edits.reading(first.log(), rep);
            Optional<KeptReading> other = edits.reading(second.log(), rep);
            if (one.isEmpty() || other.isEmpty()) {
                return new EditResult.Missing();
            }
            if (isOther(one.get(), first.version())) {
                return new EditResult.Stale(one.get());
            }
            if (isOther(other.get(), second.version())) {
                return new EditResult.Stale(other.get());
            }
            Optional<String> wrong = wrong(first.log(), second.log(), choices.keySet());
            if (wrong.isPresent()) {
                return new EditResult.Refused(List.of(wrong.get()));
            }
            LogId id = new LogId(
                    Reconciled.NAME, first.log().prospect(), first.log().game());
            Set<String> charted = store.log(id).map(Log::charted).orElse(Set.of());
            return put(id, rep, settled, settling.log(one.get(), other.get(), choices, charted));
        });
    }

    private EditResult put(LogId id, String rep, Optional<String> settled, Log log) {
        Optional<KeptReading> now = edits.reading(id, rep);
        if (now.isEmpty()) {
            return settled.isPresent() ? new EditResult.Missing() : edits.add(log);
        }
        return settled.isPresent() ? edits.edit(id, rep, settled.get(), log) : new EditResult.Stale(now.get());
    }

    private Optional<String> wrong(LogId first, LogId second, Set<String> columns) {
        if (first.equals(second)
                || !first.prospect().equals(second.prospect())
                || !first.game().equals(second.game())) {
            return Optional.of("Two evaluators' readings of one rep can be reconciled, and these are not.");
        }
        if (Reconciled.is(first.evaluator()) || Reconciled.is(second.evaluator())) {
            return Optional.of(
                    "A reconciled reading is not reconciled again: change it, or choose anew between the two.");
        }
        return columns.stream()
                .filter(column -> !settling.knows(column))
                .findFirst()
                .map(column -> "There is no column \"" + column + "\" to choose in.");
    }

    private static boolean isOther(KeptReading reading, String version) {
        return !ReadingVersion.of(reading.reading()).equals(version);
    }
}
