package rushlight.store;

import java.nio.file.Path;
import java.util.Optional;
import rushlight.store.Aligned.How;
import rushlight.store.RemoteStoreException.Kind;

/** Keeps the store of a folder a copy of the one elsewhere. */
final class Replica {
    private final Transactions here;
    private final RemoteStore there;
    private final Optional<Path> folder;

    /** @param folder of the store; empty for one in memory */
    Replica(Transactions here, RemoteStore there, Optional<Path> folder) {
        this.here = here;
        this.there = there;
        this.folder = folder;
    }

    /** Whether both hold the same state. */
    boolean isInStep() {
        Optional<String> stamp = here.read(Standing::of).stamp();
        return stamp.isPresent() && stamp.equals(there.state().stamp());
    }

    /**
     * Brings both to the same state: an empty store is filled, otherwise what it holds is fetched.
     *
     * @param mayBegin whether a person just named the store, so that an empty one may be filled with what is here
     * @param beforeReplacing called before anything is committed that does not follow on what was here
     */
    Aligned align(boolean mayBegin, Runnable beforeReplacing) {
        Standing remote = there.state();
        there.clearStaged(false);
        Standing local = here.read(Standing::of);
        boolean isOurs = remote.lineage().isPresent() && remote.lineage().equals(local.lineage());
        if (remote.stamp().isPresent()) {
            if (isOurs && remote.stamp().equals(local.stamp())) {
                return new Aligned(How.NOTHING, 0);
            }
            if (!isOurs && hasFilm()) {
                throw another();
            }
            return new Fetching(here, there, folder).fetch(beforeReplacing);
        }
        if (remote.filling().isPresent()) {
            if (!isOurs || !remote.filling().equals(local.filling())) {
                throw halfFilled();
            }
            return new Filling(here, there).resume(local);
        }
        if (!there.isEmpty()) {
            throw foreign();
        }
        // What was begun when the store was named, and broke off before anything reached it, may be begun again.
        if (!mayBegin && local.filling().isEmpty()) {
            throw emptied();
        }
        return new Filling(here, there).begin();
    }

    private boolean hasFilm() {
        return here.read(data -> data.stream().anyMatch(Standing::isFilm));
    }

    private RemoteStoreException another() {
        return unfit(
                "The store at " + there.address() + " and this folder hold different film, and neither is put in the"
                        + " place of the other. Name a new folder with --data to work on what the store holds, and import into it"
                        + " what you have here (rushlight export). Nothing was changed.");
    }

    private RemoteStoreException halfFilled() {
        return unfit(
                "The store at " + there.address() + " is being filled by another folder, or that was cut off. Open that"
                        + " folder with --store, which ends it; or empty the store. Nothing was changed.");
    }

    private RemoteStoreException foreign() {
        return unfit(
                "The store at " + there.address() + " holds something that Rushlight did not put there, and no film is"
                        + " put among it. Name an empty one. Nothing was changed.");
    }

    private RemoteStoreException emptied() {
        return new RemoteStoreException(
                Kind.EMPTIED,
                "The store at " + there.address()
                        + " holds nothing any more. To give it this folder's film, open it with"
                        + " --store; the film is read here as it was. Nothing was changed.",
                null);
    }

    private static RemoteStoreException unfit(String why) {
        return new RemoteStoreException(Kind.UNFIT, why, null);
    }
}
