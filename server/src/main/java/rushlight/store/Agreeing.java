package rushlight.store;

import java.time.Duration;
import java.util.Optional;
import org.apache.jena.sparql.core.DatasetGraph;
import rushlight.store.RemoteStoreException.Kind;

/**
 * Agrees on one change with the store elsewhere, before it is committed here. The change is sent as one update that applies
 * only to the state this copy knows; then the state that stands tells whether it did, however the answer was lost.
 */
final class Agreeing {
    private static final int TRIES = 3;
    private static final Duration BETWEEN_TRIES = Duration.ofMillis(500);

    private final RemoteStore store;
    private boolean agreed;
    private Optional<String> barred = Optional.empty();

    Agreeing(RemoteStore store) {
        this.store = store;
    }

    /** Whether the store elsewhere has the change. */
    boolean isAgreed() {
        return agreed;
    }

    /** The state the store elsewhere was set to, so that the change, should it still be on its way, comes too late. */
    Optional<String> barred() {
        return barred;
    }

    /**
     * Sends a change and writes the new state down here, within the transaction.
     *
     * @throws RemoteStoreException where the change does not stand there
     */
    void agree(Difference difference, DatasetGraph data) {
        if (difference.isEmpty()) {
            return;
        }
        Standing here = Standing.of(data);
        String old = here.stamp().orElseThrow(store::neverInStep);
        String fresh = Standing.fresh();
        Standing next = here.changedTo(fresh);
        try {
            store.change(difference, here, next);
        } catch (RemoteStoreException e) {
            if (e.kind() != Kind.AWAY) {
                throw e;
            }
            findOut(here, old, e);
        }
        Standing now = asked();
        if (!now.stamp().equals(next.stamp())) {
            throw now.wasAt(fresh) ? store.overtaken() : store.stale();
        }
        next.write(data);
        agreed = true;
    }

    private Standing asked() {
        try {
            return standing();
        } catch (RemoteStoreException e) {
            throw store.undecided(e);
        }
    }

    /** No answer came, or one that says nothing: the change is done, or is kept from being done later. */
    private void findOut(Standing here, String old, RemoteStoreException why) {
        Optional<String> bar = Optional.of(Standing.fresh());
        try {
            if (standing().stamp().equals(Optional.of(old))) {
                store.restamp(here, bar.get());
                barred = standing().stamp().equals(bar) ? bar : Optional.empty();
            }
        } catch (RemoteStoreException e) {
            throw store.undecided(e);
        }
        if (barred.isPresent()) {
            throw why;
        }
    }

    /** The state that stands there; a connection that just broke is given some time to be had again. */
    private Standing standing() {
        for (int tries = 1; ; tries++) {
            try {
                return store.state();
            } catch (RemoteStoreException e) {
                if (!e.isAway() || tries == TRIES) {
                    throw e;
                }
                pause();
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(BETWEEN_TRIES.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
