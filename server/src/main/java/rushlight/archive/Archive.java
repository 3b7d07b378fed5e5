package rushlight.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.stream.Stream;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.index.Count;
import rushlight.index.Footage;
import rushlight.index.IndexState;
import rushlight.index.RepIndex;
import rushlight.situation.LogFacts;
import rushlight.store.Change;
import rushlight.store.Store;

/**
 * An open data folder. A write is one transaction of the store; then the index is brought up to the same revision. What
 * the store has, nobody loses: an index that is behind, or was made with another book, catches up when the folder is
 * opened.
 */
public final class Archive implements AutoCloseable {
    private static final int LOGS_AT_ONCE = 200;

    private final Path folder;
    private final FolderLock lock;
    private final Book book;
    private final Store store;
    private final RepIndex index;
    private final Writing writing;

    /** One writer at a time; readers never wait. */
    private final ReentrantLock one = new ReentrantLock();

    private Archive(Path folder, FolderLock lock, Book book, Store store, RepIndex index) {
        this.folder = folder;
        this.lock = lock;
        this.book = book;
        this.store = store;
        this.index = index;
        this.writing = new Writing(book, store, index);
    }

    /**
     * Opens a data folder, and makes it where there is none.
     *
     * @throws FolderException where it cannot be written, is held by another program, or is of a newer layout
     */
    public static Archive open(Path folder) {
        make(folder);
        FolderLock lock = FolderLock.take(folder);
        try {
            Settings.in(folder).save(folder);
            Book book = Book.of(folder);
            make(folder.resolve("store"));
            Store store = Store.in(folder.resolve("store"), book.taxonomy().film());
            RepIndex index =
                    RepIndex.in(folder.resolve("index"), book.situations().facets(), book.pages());
            Archive archive = new Archive(folder, lock, book, store, index);
            archive.catchUp();
            return archive;
        } catch (RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    /** The book this folder is read with, its own terms included. */
    public Book book() {
        return book;
    }

    /** The letter of the numbering system of a bare alignment number, where the folder sets one. */
    public Optional<String> numbering() {
        return Settings.in(folder).defaultNumbering();
    }

    /** Orders logs by whose reading of a rep counts first. */
    public Comparator<LogId> firstBelieved() {
        return Settings.in(folder).firstBelieved();
    }

    /** Asks a question of everything that can be counted, as it is now. */
    public <T> T watch(Function<Footage, T> question) {
        return index.read(Settings.in(folder).evaluators(), question);
    }

    /** What the film says of one prospect; empty where there is none of this id. */
    public Optional<Assessment> assess(String prospect) {
        return watch(footage -> footage.tape(prospect).map(book::assess));
    }

    /** What the film says of everybody, in order of their ids. */
    public List<Assessment> assess() {
        return watch(footage -> footage.tapes().parallel().map(book::assess).toList());
    }

    /** How often a counter was thrown off a move after an answer, and how often that won. */
    public Count seen(Optional<String> move, Optional<String> answer, String counter) {
        return watch(footage -> book.asker().seen(footage, move, answer, counter));
    }

    /** What is known of every prospect. */
    public List<Prospect> prospects() {
        return store.prospects();
    }

    /** Every log as it was charted, in the order of evaluator, prospect and game. */
    public List<Log> logs() {
        return store.logs().stream().flatMap(id -> store.log(id).stream()).toList();
    }

    /** One log as it was charted. */
    public Optional<Log> log(LogId id) {
        return store.log(id);
    }

    /** The film as Turtle. */
    public void writeTurtle(OutputStream out) {
        store.writeTurtle(out);
    }

    /** The stored film, for questions in SPARQL. */
    public Store store() {
        return store;
    }

    /**
     * Puts logs in place of those of the same evaluator, prospect and game: all of them or none.
     *
     * @param add keep stored readings whose rep the new log does not name
     */
    public PutResult put(List<Log> logs, boolean add) {
        return put(logs, List.of(), add);
    }

    /**
     * The same together with what is known of prospects, which takes the place of what was known before.
     *
     * @param prospects nothing is kept of them either where the logs are refused
     * @param add keep stored readings whose rep the new log does not name
     */
    public PutResult put(List<Log> logs, Collection<Prospect> prospects, boolean add) {
        return put(logs, prospects, add, "");
    }

    /** The same with somebody's account. */
    public PutResult put(List<Log> logs, Collection<Prospect> prospects, boolean add, String by) {
        one.lock();
        try {
            return putAlone(logs, prospects, add, writing.by(by));
        } finally {
            one.unlock();
        }
    }

    private PutResult putAlone(List<Log> logs, Collection<Prospect> prospects, boolean add, Writing writing) {
        List<String> reasons = Clashes.of(logs, prospects, store);
        if (!reasons.isEmpty()) {
            return new PutResult.Refused(reasons);
        }
        Map<LogId, Log> byId = Adding.byId(logs, add, store);
        List<PutResult.Replaced> replaced = new ArrayList<>();
        byId.forEach((id, log) -> replaced.add(
                new PutResult.Replaced(id, store.readings(id), log.readings().size())));
        PutResult.Stored stored = new PutResult.Stored(replaced);
        writing.write(byId.values(), List.of(), prospects, Change.Note.of(Change.Kind.IMPORT, stored.said()));
        Settings.in(folder)
                .withEvaluators(logs.stream().map(Log::evaluator).distinct().toList())
                .save(folder);
        return stored;
    }

    /** Changes one rep at a time, and takes changes back. */
    public Edits edits() {
        return new Edits(book, store, writing, one);
    }

    /** Gives out or erases everything of one prospect. */
    public Erasing erasing() {
        return new Erasing(folder, book, store, index);
    }

    private void catchUp() {
        long revision = store.revision();
        Optional<IndexState> state = index.state().filter(s -> s.fingerprint().equals(fingerprint()));
        if (state.isEmpty()) {
            rebuild();
        } else if (state.get().revision() != revision) {
            Set<LogId> changed = store.changedSince(state.get().revision());
            Set<LogId> gone = new HashSet<>(changed);
            store.logs().forEach(gone::remove);
            changed.removeAll(gone);
            index.update(read(changed), gone, store.prospects(), new IndexState(revision, fingerprint()));
        }
    }

    /** Classifies and indexes everything again, as after a change of the book. */
    public void rebuild() {
        List<LogId> all = store.logs();
        for (int from = 0; from < all.size(); from += LOGS_AT_ONCE) {
            List<LogFacts> some = read(all.subList(from, Math.min(all.size(), from + LOGS_AT_ONCE)))
                    .toList();
            store.reclassify(Writing.classified(some), fingerprint(), Writing.now());
        }
        index.rebuild(read(all), store.prospects(), new IndexState(store.revision(), fingerprint()));
    }

    private Stream<LogFacts> read(Collection<LogId> ids) {
        return ids.stream().flatMap(id -> store.log(id).stream()).map(book::classified);
    }

    private String fingerprint() {
        return book.ontology().fingerprint();
    }

    private static void make(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new FolderException(
                    "The data folder " + folder
                            + " cannot be made: is there a file of that name, or no permission to write?",
                    e);
        }
    }

    @Override
    public void close() {
        try {
            index.close();
            store.close();
        } finally {
            lock.close();
        }
    }
}
