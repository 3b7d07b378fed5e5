package rushlight.archive;

import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.index.Footage;
import rushlight.index.IndexState;
import rushlight.index.RepIndex;
import rushlight.situation.LogFacts;
import rushlight.store.Store;

/**
 * Keeps the index at the revision of the store, by the revision that it holds itself. One that could not follow, for want
 * of room perhaps, catches up before anything is asked of it: nobody is answered from film that is no longer so.
 */
final class Indexing implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Indexing.class);
    private static final int LOGS_AT_ONCE = 200;
    private static final String NO_BOOK = "none";

    private final Path folder;
    private final Book book;
    private final Store store;
    private volatile RepIndex index;
    private volatile boolean behind;

    /** Opens the index in a folder; it is to be brought up to the store before anything is asked of it. */
    Indexing(Path folder, Book book, Store store) {
        this.folder = folder;
        this.book = book;
        this.store = store;
        this.index = open();
    }

    /** Answers a question from one state of the film. */
    <T> T read(List<String> evaluators, Function<Footage, T> question) {
        if (behind) {
            catchUpAnew();
        }
        return index.read(evaluators, question);
    }

    /**
     * Follows a change that the store has made.
     *
     * @throws IndexBehindException where the index could not be written; the change is stored all the same
     */
    synchronized void follow(
            Stream<LogFacts> facts, Collection<LogId> gone, Collection<Prospect> prospects, long revision) {
        if (behind || known().isEmpty()) {
            catchUpNow(); // also where filling it was cut off: nobody shall take it for whole
            return;
        }
        guarded(() -> index.update(facts, gone, prospects, new IndexState(revision, fingerprint())));
    }

    /** Classifies and indexes everything again, as after a change of the book. */
    synchronized void rebuild() {
        if (behind) {
            openAnew();
        }
        classify(store.logs());
        guarded(this::indexAll);
        behind = false;
    }

    /** Holds nothing and is of no book until it is rebuilt; should that not come, the next opening makes it anew. */
    synchronized void empty() {
        guarded(() -> index.rebuild(Stream.empty(), List.of(), new IndexState(store.revision(), NO_BOOK)));
    }

    /** Is of no book until it is filled: should that not come, the next opening makes it anew. What it holds stays. */
    synchronized void doubt() {
        guarded(() -> index.mark(new IndexState(store.revision(), NO_BOOK)));
    }

    /** Follows whatever the store has and this has not. */
    synchronized void catchUpNow() {
        if (behind) {
            catchUpAnew();
        } else {
            catchUp();
        }
    }

    /** Indexes everything as it was classified. */
    synchronized void fill() {
        guarded(this::indexAll);
    }

    /** How many changes of the film the index has not taken in; 0 where the two are in step. */
    long lag() {
        return store.revision() - index.state().map(IndexState::revision).orElse(0L);
    }

    private void catchUp() {
        long revision = store.revision();
        Optional<IndexState> state = known();
        if (state.isEmpty()) {
            classify(store.classifiedOtherwise(fingerprint()));
            guarded(this::indexAll);
        } else if (state.get().revision() != revision) {
            Set<LogId> changed = store.changedSince(state.get().revision());
            Set<LogId> gone = new HashSet<>(changed);
            store.logs().forEach(gone::remove);
            changed.removeAll(gone);
            guarded(() ->
                    index.update(read(changed), gone, store.prospects(), new IndexState(revision, fingerprint())));
        }
    }

    /** What it holds, where that was classified by this book. */
    private Optional<IndexState> known() {
        return index.state().filter(s -> s.fingerprint().equals(fingerprint()));
    }

    private synchronized void catchUpAnew() {
        if (behind) {
            openAnew();
            catchUp();
            behind = false;
        }
    }

    private synchronized void openAnew() {
        try {
            index.close(); // first: it may still hold the lock that the next one wants
        } catch (RuntimeException e) {
            LOG.debug("What was left of an index that could not be written", e);
        }
        index = guarded(this::open);
    }

    /** The revision of the film that questions are answered from. */
    long shown() {
        return index.shown();
    }

    private void classify(List<LogId> logs) {
        for (int from = 0; from < logs.size(); from += LOGS_AT_ONCE) {
            List<LogFacts> some = read(logs.subList(from, Math.min(logs.size(), from + LOGS_AT_ONCE)))
                    .toList();
            store.reclassify(Writing.classified(some), fingerprint(), Writing.now());
        }
    }

    private void indexAll() {
        index.rebuild(read(store.logs()), store.prospects(), new IndexState(store.revision(), fingerprint()));
    }

    private void guarded(Runnable work) {
        guarded(() -> {
            work.run();
            return true;
        });
    }

    private <T> T guarded(Supplier<T> work) {
        try {
            return work.get();
        } catch (RuntimeException e) {
            behind = true;
            throw IndexBehindException.of(folder, e);
        }
    }

    private Stream<LogFacts> read(Collection<LogId> ids) {
        return ids.stream().flatMap(id -> store.log(id).stream()).map(book::classified);
    }

    private RepIndex open() {
        return RepIndex.in(folder, book.situations().facets(), book.pages());
    }

    private String fingerprint() {
        return book.ontology().fingerprint();
    }

    @Override
    public void close() {
        index.close();
    }
}
