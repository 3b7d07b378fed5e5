package rushlight.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.function.Supplier;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.index.Count;
import rushlight.index.Footage;
import rushlight.store.Change;
import rushlight.store.Store;

/**
 * An open data folder. A write is one transaction of the store; then the index is brought up to the same revision. What
 * the store has, nobody loses: an index that is behind, or was made with another book, catches up when the folder is
 * opened.
 */
public final class Archive implements AutoCloseable {
    static final String STORE = "store";

    private final Path folder;
    private final FolderLock lock;
    private final Book book;
    private final Store store;
    private final Indexing index;
    private final Writing writing;
    private final Following following;

    /** One writer at a time, in the order they came, so that nobody waits for ever; readers never wait. */
    private final ReentrantLock one;

    Archive(Path folder, FolderLock lock, Book book, Store store, Indexing index, Following following) {
        this.folder = folder;
        this.lock = lock;
        this.book = book;
        this.store = store;
        this.index = index;
        this.following = following;
        this.writing = new Writing(book, store, index);
        this.one = following.one();
    }

    /**
     * Opens a data folder, and makes it where there is none.
     *
     * @throws FolderException where it cannot be written, is held by another program, or is of a newer layout
     */
    public static Archive open(Path folder) {
        return open(folder, KeptAt.asBefore());
    }

    /**
     * The same with its film in another place.
     *
     * @throws rushlight.store.RemoteStoreException where the film cannot be kept there
     */
    public static Archive open(Path folder, KeptAt place) {
        return new Opening(folder, place).open(() -> Book.of(folder), Layouts.KNOWN);
    }

    /** The same with a book that was made already, and with other steps from older layouts. */
    static Archive open(Path folder, Supplier<Book> read, Layouts layouts) {
        return new Opening(folder, KeptAt.asBefore()).open(read, layouts);
    }

    /** How it keeps in step with the store on another machine, where the film is kept in one. */
    public Following following() {
        return following;
    }

    /** The book this folder is read with, its own terms included. */
    public Book book() {
        return book;
    }

    Path folder() {
        return folder;
    }

    /** The letter of the numbering system of a bare alignment number, where the folder sets one. */
    public Optional<String> numbering() {
        return Settings.in(folder).defaultNumbering();
    }

    /** Orders logs by whose reading of a rep counts first. */
    public Comparator<LogId> firstBelieved() {
        return Settings.in(folder).firstBelieved();
    }

    /** How many changes of the film the index has not taken in; 0 where the two are in step. */
    public long lag() {
        return index.lag();
    }

    /** The revision of the film that questions are answered from: the store's, but while the index takes a change in. */
    public long shown() {
        return index.shown();
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
            return following.twice(() -> putAlone(logs, prospects, add, writing.by(by)));
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
        // First who is believed, then the film: a crash between the two leaves a name in a list, and no film is read
        // otherwise than its import would have had it.
        Settings before = Settings.in(folder);
        before.withEvaluators(logs.stream().map(Log::evaluator).distinct().toList())
                .saveAfter(before, folder);
        long revision = store.revision();
        try {
            writing.write(byId.values(), List.of(), prospects, Change.Note.of(Change.Kind.IMPORT, stored.said()));
        } finally {
            if (store.revision() == revision) {
                before.save(folder);
            }
        }
        return stored;
    }

    /** Changes one rep at a time, and takes changes back. */
    public Edits edits() {
        return new Edits(book, store, writing, one);
    }

    /** Gives out or erases everything of one prospect. */
    public Erasing erasing() {
        return following.erasing();
    }

    /** Classifies and indexes everything again, as after a change of the book. */
    public void rebuild() {
        one.lock();
        try {
            following.twice(index::rebuild);
        } finally {
            one.unlock();
        }
    }

    /** Writes everything that this folder holds, but what can be made again, as one backup. Nobody has to wait for it. */
    public BackupManifest backup(OutputStream out) throws IOException {
        return new BackupWriter(folder, book, store, one).write(out);
    }

    /** Tells whoever else wants the folder meanwhile at which address it is shown in a browser. */
    public void shownAt(String address) {
        lock.shownAt(address);
    }

    /** Waits for whoever is writing, and gives the folder back. */
    @Override
    public void close() {
        one.lock();
        try {
            Opening.close(lock, store, index);
        } finally {
            one.unlock();
        }
    }
}
