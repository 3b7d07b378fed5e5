package rushlight.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** How the store of a folder stands to the one elsewhere that it is a copy of. */
public final class Elsewhere {
    private final Transactions here;
    private final Optional<Path> folder;
    private final Optional<Replica> replica;

    Elsewhere(Transactions here, Optional<Path> folder) {
        this.here = here;
        this.folder = folder;
        this.replica = here.remote().map(there -> new Replica(here, there, folder));
    }

    /** Where the film is kept, where that is elsewhere. */
    public Optional<RemoteAddress> address() {
        return here.remote().map(RemoteStore::address);
    }

    /** Takes away what a fetch that was cut off left beside the store: people may be named in it who are erased since. */
    public void tidy() {
        folder.ifPresent(Beside::clear);
    }

    /** Which film the folder holds a copy of, by a name of no meaning; empty where of none. */
    public Optional<String> film() {
        return here.read(Standing::of).lineage();
    }

    /**
     * Whether both hold the same state; yes where there is no other.
     *
     * @throws RemoteStoreException where that cannot be asked
     */
    public boolean isInStep() {
        return replica.map(Replica::isInStep).orElse(true);
    }

    /** Whether they ever did, so that the copy can be read without the other. */
    public boolean wasInStep() {
        return here.read(Standing::of).stamp().isPresent();
    }

    /**
     * Brings both in step: fills a store that is empty, or fetches what has changed there.
     *
     * @param mayBegin whether a person just named the store, so that an empty one may be filled with what is here
     * @param beforeReplacing called before anything is committed that does not follow on what was here
     * @throws RemoteStoreException where that cannot be; nothing was changed here then
     */
    public Aligned align(boolean mayBegin, Runnable beforeReplacing) {
        return replica.map(its -> its.align(mayBegin, beforeReplacing)).orElse(new Aligned(Aligned.How.NOTHING, 0));
    }

    /** Who has logs, by slug, in the order in which they came to the film: the same in every copy. */
    public List<String> evaluators() {
        return here.read(StoredRevision::evaluators);
    }

    /** Names what brings the folder up to date once somebody else turns out to have written there. */
    public void whenStale(Runnable work) {
        here.whenStale(work);
    }

    /** Makes the store nobody's copy: what is changed from now on is changed here alone. */
    public void detach() {
        if (!here.read(Standing::of).equals(Standing.NONE)) {
            here.alone(data -> {
                Standing.NONE.write(data);
                return data;
            });
        }
    }
}
