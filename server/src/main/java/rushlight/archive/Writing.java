package rushlight.archive;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.film.RepFacts;
import rushlight.situation.LogFacts;
import rushlight.store.Change;
import rushlight.store.Classified;
import rushlight.store.Store;

/** Brings store and index from one revision to the next: the store first, so that nothing acknowledged is lost. */
final class Writing {
    private final Book book;
    private final Store store;
    private final Indexing index;
    private final Known known;
    private final String by;

    Writing(Book book, Store store, Indexing index) {
        this(book, store, index, new Known(book), "");
    }

    private Writing(Book book, Store store, Indexing index, Known known, String by) {
        this.book = book;
        this.store = store;
        this.index = index;
        this.known = known;
        this.by = by;
    }

    /** The same with somebody's account. */
    Writing by(String name) {
        return new Writing(book, store, index, known, name);
    }

    /** Makes one change and gives its number. */
    long write(Collection<Log> logs, Collection<LogId> gone, Collection<Prospect> prospects, Change.Note note) {
        List<LogFacts> facts = logs.size() == 1
                ? logs.stream().map(known::classified).toList()
                : logs.parallelStream().map(book::classified).toList();
        long revision = store.change(new Change(classified(facts), gone, prospects, note.by(by)), fingerprint(), now());
        index.follow(facts.stream(), gone, everybody(logs, prospects), revision);
        return revision;
    }

    /** Everybody a change speaks of, as the store knows him now: an index made anew would hold him, too. */
    private List<Prospect> everybody(Collection<Log> logs, Collection<Prospect> listed) {
        return Stream.concat(logs.stream().map(Log::prospect), listed.stream())
                .map(Prospect::id)
                .distinct()
                .flatMap(id -> store.prospect(id).stream())
                .toList();
    }

    static List<Classified> classified(List<LogFacts> logs) {
        return logs.stream()
                .map(log -> new Classified(
                        log.log(), log.facts().stream().map(Writing::classes).toList()))
                .toList();
    }

    static Instant now() {
        return Instant.now().truncatedTo(ChronoUnit.MILLIS);
    }

    private static Set<String> classes(RepFacts facts) {
        return facts.tagged(Book.REP_CLASS);
    }

    private String fingerprint() {
        return book.ontology().fingerprint();
    }
}
