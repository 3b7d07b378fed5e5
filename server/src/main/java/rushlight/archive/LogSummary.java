package rushlight.archive;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.store.Store;

/**
 * A log without its readings.
 *
 * @param id evaluator, prospect and game
 * @param evaluator who read it, by name
 * @param prospect whose film
 * @param game which game
 * @param readings how many readings it holds
 * @param charted list columns that were looked at
 * @param file name of the file it came from
 */
public record LogSummary(
        LogId id, String evaluator, Prospect prospect, Game game, int readings, Set<String> charted, String file) {
    public LogSummary {
        charted = Set.copyOf(charted);
    }

    /** Every log of a store, in the order of evaluator, prospect and game. */
    public static List<LogSummary> all(Store store) {
        return some(store, id -> true);
    }

    /** Every log of one prospect. */
    public static List<LogSummary> of(Store store, String prospect) {
        return some(store, id -> id.prospect().equals(prospect));
    }

    private static List<LogSummary> some(Store store, Predicate<LogId> wanted) {
        return store.logs().stream()
                .filter(wanted)
                .flatMap(id -> store.head(id).map(head -> of(id, head, store.readings(id))).stream())
                .toList();
    }

    private static LogSummary of(LogId id, Log head, int readings) {
        return new LogSummary(
                id,
                head.evaluator(),
                head.prospect(),
                head.game(),
                readings,
                head.charted(),
                head.source().file());
    }
}
