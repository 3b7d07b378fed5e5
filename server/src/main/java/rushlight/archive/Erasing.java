package rushlight.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import rushlight.store.Erased;
import rushlight.store.Store;

/**
 * Gives out everything that is kept of one prospect, and erases it: from the store with its history, from what people kept,
 * and from the index; the files are written anew, so that nothing of him is left in them. What was backed up, exported or
 * printed before stays what it is.
 */
public final class Erasing {
    private static final String UNFINISHED = "erasing";

    private final Path folder;
    private final Store store;
    private final Indexing index;
    private final ReentrantLock one;

    Erasing(Path folder, Store store, Indexing index, ReentrantLock one) {
        this.folder = folder;
        this.store = store;
        this.index = index;
        this.one = one;
    }

    /** Writes everything that is stored of a prospect as TriG: what {@link #erase} would take away. */
    public void write(String prospect, OutputStream out) {
        store.personal().write(prospect, out);
    }

    /**
     * Erases a prospect.
     *
     * @param prospect his id
     * @return what went; empty where nobody has this id
     */
    public Optional<Erased> erase(String prospect) {
        one.lock();
        try {
            finishLast();
            if (store.prospect(prospect).isEmpty()) {
                return Optional.empty();
            }
            begin();
            index.empty();
            try {
                return Optional.of(store.personal().erase(prospect, Writing.now()));
            } finally {
                // Also where the store on another machine refused: then the index takes him in again.
                finish();
            }
        } finally {
            one.unlock();
        }
    }

    /** Finishes an erasing that was cut short; nobody is erased by it who was not to be erased then. */
    public void finishLast() {
        one.lock();
        try {
            if (Files.exists(folder.resolve(UNFINISHED))) {
                finish();
            }
        } finally {
            one.unlock();
        }
    }

    /** Neither waits for the other, should there be no room for one of them; it is finished once both are done. */
    void finish() {
        try {
            index.fill();
        } finally {
            store.personal().compact();
        }
        try {
            Files.deleteIfExists(folder.resolve(UNFINISHED));
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }

    /** Notes that somebody goes, until {@link #finish} has seen to it that nothing of him is left in the files. */
    void begin() {
        try {
            Files.writeString(folder.resolve(UNFINISHED), "Erasing was cut short; the next opening finishes it.\n");
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }
}
