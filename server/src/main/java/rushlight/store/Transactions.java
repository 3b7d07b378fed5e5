package rushlight.store;

import java.util.Optional;
import java.util.function.Function;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.system.Txn;
import org.jspecify.annotations.Nullable;
import rushlight.store.RemoteStoreException.Kind;

/**
 * The transactions of a store. Where the film is kept elsewhere, a change is agreed with that store before it is committed
 * here: both have it or, if anything fails, neither.
 */
final class Transactions {
    private final DatasetGraph data;
    private final Room room;
    private final Optional<RemoteStore> remote;
    private volatile Runnable whenStale = () -> {};

    /** What the one transaction that writes is changing; only its thread sets and uses it. */
    private volatile @Nullable Recorder current;

    Transactions(DatasetGraph data, Room room, Optional<RemoteStore> remote) {
        this.data = data;
        this.room = room;
        this.remote = remote;
    }

    DatasetGraph data() {
        return data;
    }

    Room room() {
        return room;
    }

    Optional<RemoteStore> remote() {
        return remote;
    }

    /** What brings the folder up to date once somebody else turns out to have written. */
    void whenStale(Runnable work) {
        whenStale = work;
    }

    <T> T read(Function<DatasetGraph, T> question) {
        return Txn.calculateRead(data, () -> question.apply(data));
    }

    /**
     * Changes the store, and brings it up to date where that failed because somebody else had written elsewhere.
     *
     * @throws RemoteStoreException where the store elsewhere does not take part; nothing was changed then
     */
    <T> T write(Function<DatasetGraph, T> change) {
        try {
            return writeAsItIs(change);
        } catch (RemoteStoreException e) {
            if (e.kind() == Kind.STALE && !data.isInTransaction()) {
                whenStale.run();
            } else if (e.kind() == Kind.OVERTAKEN && !data.isInTransaction()) {
                fetchAfter(e);
            }
            throw e;
        }
    }

    /** That the change is stored is to be told, whatever becomes of the fetching. */
    private void fetchAfter(RemoteStoreException overtaken) {
        try {
            whenStale.run();
        } catch (RemoteStoreException e) {
            overtaken.addSuppressed(e);
        }
    }

    /** The same, and where somebody else had written the folder stays as it is. */
    <T> T writeAsItIs(Function<DatasetGraph, T> change) {
        if (remote.isEmpty()) {
            return alone(change);
        }
        Recorder outer = current;
        if (data.isInTransaction() && outer != null) {
            return change.apply(outer);
        }
        return together(remote.get(), change);
    }

    /** Changes this copy and nothing elsewhere. */
    <T> T alone(Function<DatasetGraph, T> change) {
        return room.guarded(() -> Txn.calculateWrite(data, () -> change.apply(data)));
    }

    private <T> T together(RemoteStore store, Function<DatasetGraph, T> change) {
        Agreeing agreeing = new Agreeing(store);
        try {
            return room.guarded(() -> Txn.calculateWrite(data, () -> {
                Recorder recorder = new Recorder(data);
                current = recorder;
                try {
                    T result = change.apply(recorder);
                    agreeing.agree(recorder.difference(), data);
                    return result;
                } finally {
                    current = null;
                }
            }));
        } catch (RuntimeException e) {
            agreeing.barred()
                    .ifPresent(stamp -> alone(copy -> {
                        Standing.of(copy).at(stamp).write(copy);
                        return stamp;
                    }));
            throw agreeing.isAgreed() ? store.ahead(e) : e;
        }
    }
}
