package rushlight.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import rushlight.film.Identity;
import rushlight.store.Aligned;
import rushlight.store.Elsewhere;
import rushlight.store.RemoteStoreException;
import rushlight.store.RemoteStoreException.Kind;
import rushlight.store.Store;

/**
 * Keeps store and index of a folder in step with the store on another machine that the film is kept in. Where there is none,
 * there is nothing to follow.
 */
public final class Following {
    private final Path folder;
    private final Store store;
    private final Elsewhere elsewhere;
    private final Indexing index;
    private final Erasing erasing;
    private final ReentrantLock one = new ReentrantLock(true);
    private List<String> notes = List.of();

    Following(Path folder, Store store, Indexing index) {
        this.folder = folder;
        this.store = store;
        this.elsewhere = store.elsewhere();
        this.index = index;
        this.erasing = new Erasing(folder, store, index, one);
        elsewhere.whenStale(this::catchUp);
    }

    /**
     * Brings the folder in step when it is opened; where the store cannot be reached, the film can be read as it was.
     *
     * @param isSaid whether a person just said where the film is kept
     * @param isAsBefore whether it was kept there before, so that it may be read without it
     */
    void begin(boolean isSaid, boolean isAsBefore) {
        elsewhere.tidy();
        if (elsewhere.address().isEmpty()) {
            elsewhere.detach();
            return;
        }
        List<String> found = new ArrayList<>();
        if (!isSaid) {
            found.add(
                    "The film of this folder is kept at " + elsewhere.address().get() + ".");
        }
        try {
            Aligned done = align(isSaid);
            switch (done.how()) {
                case SENT -> found.add("The store there was empty and has the film of this folder now.");
                case CONTINUED, REPLACED -> found.add("Fetched what was changed there.");
                case NOTHING -> {}
            }
        } catch (RemoteStoreException e) {
            boolean isGone = e.kind() == Kind.EMPTIED;
            if (!(e.isAway() || isGone) || !isAsBefore || !elsewhere.wasInStep()) {
                throw e;
            }
            found.add(e.getMessage()
                    + " You read the film as it was when this folder was last in step with it; until it is"
                    + " back, nothing can be changed.");
        }
        notes = List.copyOf(found);
    }

    /** Which film this is the copy of; empty where of none. */
    Optional<String> film() {
        return elsewhere.film();
    }

    /** Erases in this folder. */
    Erasing erasing() {
        return erasing;
    }

    /** Whoever writes to the folder holds this. */
    ReentrantLock one() {
        return one;
    }

    /** What a person should know of where the film is kept, and whether it could be reached when the folder was opened. */
    public List<String> notes() {
        return notes;
    }

    /** Whether the film is kept on another machine, where others may change it. */
    public boolean isElsewhere() {
        return elsewhere.address().isPresent();
    }

    /**
     * Fetches what others have changed there, if anything.
     *
     * @throws RemoteStoreException where that cannot be found out; the film can be read as it was
     */
    public void catchUp() {
        if (!elsewhere.isInStep()) {
            align(false);
        }
    }

    /** Does what does not hang on the film as it was seen; once more where somebody else wrote in between. */
    <T> T twice(Supplier<T> work) {
        try {
            return work.get();
        } catch (RemoteStoreException e) {
            if (e.kind() != Kind.STALE) {
                throw e;
            }
            catchUp();
            return work.get();
        }
    }

    /** The same. */
    void twice(Runnable work) {
        twice(() -> {
            work.run();
            return true;
        });
    }

    private Aligned align(boolean mayBegin) {
        one.lock();
        try {
            AtomicBoolean isReplacing = new AtomicBoolean();
            Aligned done = elsewhere.align(mayBegin, () -> {
                isReplacing.set(true);
                beforeReplacing();
            });
            switch (done.how()) {
                case CONTINUED -> {
                    believe();
                    index.catchUpNow();
                }
                case REPLACED -> believe();
                case NOTHING, SENT -> {}
            }
            if (isReplacing.get()) {
                // Whoever was erased there shall not be left in the files here.
                erasing.finish();
            }
            return done;
        } finally {
            one.unlock();
        }
    }

    /** Should it be cut off from here on, the next opening writes index and files anew. */
    void beforeReplacing() {
        erasing.begin();
        index.doubt();
    }

    /** Whoever came to the film elsewhere is believed after those this folder knows, in the order in which they came. */
    private void believe() {
        Settings before = Settings.in(folder);
        List<String> known = before.evaluators().stream().map(Identity::slug).toList();
        before.withEvaluators(elsewhere.evaluators().stream()
                        .filter(slug -> !known.contains(slug))
                        .flatMap(slug -> store.evaluator(slug).stream())
                        .toList())
                .saveAfter(before, folder);
    }
}
