package rushlight.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.riot.system.StreamRDF;
import org.apache.jena.riot.system.StreamRDFBase;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.system.Txn;
import org.apache.jena.tdb2.DatabaseMgr;
import org.apache.jena.tdb2.sys.TDBInternal;
import rushlight.store.Aligned.How;
import rushlight.store.RemoteStoreException.Kind;

/**
 * Fetches what the store elsewhere holds. It is laid down beside first and compared there: only what differs is written, in one
 * transaction, so that whoever reads meanwhile sees the film as it was or as it is.
 */
final class Fetching {
    private static final int TRIES = 3;
    private static final Node ERASED = Literals.of(Change.Kind.ERASE.slug());

    /** Up to so many statements are laid down in memory, some hundred bytes each; more of them on the disk. */
    private static final long IN_MEMORY = 300_000;

    private final Transactions here;
    private final RemoteStore there;
    private final Optional<Path> folder;
    private final long inMemory;

    Fetching(Transactions here, RemoteStore there, Optional<Path> folder) {
        this(here, there, folder, IN_MEMORY);
    }

    /** The same with room in memory for so many statements. */
    Fetching(Transactions here, RemoteStore there, Optional<Path> folder, long inMemory) {
        this.here = here;
        this.there = there;
        this.folder = folder;
        this.inMemory = inMemory;
    }

    /** @param beforeReplacing called before anything is committed that does not follow on what was here */
    Aligned fetch(Runnable beforeReplacing) {
        folder.ifPresent(Beside::clear);
        Optional<Path> place = folder.filter(any -> there.size() > inMemory).map(Beside::of);
        DatasetGraph fetched = here.room().told(() -> beside(place));
        Optional<String> before = here.read(Standing::of).stamp();
        try {
            Standing standing = here.room().guarded(() -> load(fetched));
            boolean follows = Txn.calculateRead(fetched, () -> here.read(data -> follows(data, fetched)));
            if (!follows) {
                beforeReplacing.run();
            }
            How how = follows ? How.CONTINUED : How.REPLACED;
            return Txn.calculateRead(
                    fetched,
                    // What was fetched may be older than what others of this program agreed and wrote here meanwhile.
                    () -> here.alone(data -> Standing.of(data).stamp().equals(before)
                            ? new Aligned(how, take(data, fetched, standing))
                            : new Aligned(How.NOTHING, 0)));
        } finally {
            fetched.close();
            place.ifPresent(path -> TDBInternal.expel(fetched, true));
            folder.ifPresent(Beside::clear);
        }
    }

    /** Loads every graph as it is in one state; where it is changed meanwhile, all over again. */
    private Standing load(DatasetGraph fetched) {
        for (int tries = 1; tries <= TRIES; tries++) {
            Standing before = there.state();
            Txn.executeWrite(fetched, () -> {
                fetched.clear();
                load(Quad.defaultGraphNodeGenerated, fetched);
                there.graphs().forEach(graph -> load(graph, fetched));
            });
            if (before.equals(there.state()) && before.stamp().isPresent()) {
                return before;
            }
        }
        throw new RemoteStoreException(
                Kind.AWAY,
                "The store at " + there.address()
                        + " is being changed all the time; the folder could not be brought up to"
                        + " date. Nothing was changed. Do it again in a while.",
                null);
    }

    private void load(Node graph, DatasetGraph fetched) {
        StreamRDF into = new StreamRDFBase() {
            @Override
            public void triple(Triple triple) {
                if (triple.getSubject().isBlank() || triple.getObject().isBlank()) {
                    throw new RemoteStoreException(
                            Kind.UNFIT,
                            "The store at " + there.address()
                                    + " holds something without a name, which Rushlight did not"
                                    + " put there. Take it out there. Nothing was changed.",
                            null);
                }
                fetched.add(Quad.create(graph, triple));
            }
        };
        there.fetch(graph, into);
    }

    /**
     * Whether all that the history here tells is told there, too, and more; but nobody was erased since, for of somebody without
     * film the history told nothing that could be missing.
     */
    private static boolean follows(DatasetGraph data, DatasetGraph fetched) {
        long revision = StoredRevision.current(data);
        return revision > 0
                && revision <= StoredRevision.current(fetched)
                && data.stream(Addresses.HISTORY, Node.ANY, Node.ANY, Node.ANY).allMatch(fetched::contains)
                && fetched.stream(Addresses.HISTORY, Node.ANY, Terms.CHANGE_KIND, ERASED)
                        .allMatch(data::contains);
    }

    private static long take(DatasetGraph data, DatasetGraph fetched, Standing standing) {
        List<Quad> gone = data.stream()
                .filter(Standing::isFilm)
                .filter(quad -> !fetched.contains(quad))
                .toList();
        gone.forEach(data::delete);
        long changed = gone.size();
        for (Iterator<Quad> all = fetched.find(); all.hasNext(); ) {
            Quad quad = all.next();
            if (!data.contains(quad)) {
                data.add(quad);
                changed++;
            }
        }
        standing.write(data);
        return changed;
    }

    private static DatasetGraph beside(Optional<Path> place) {
        return place.map(path -> {
                    try {
                        Files.createDirectories(path);
                    } catch (IOException e) {
                        throw new UncheckedIOException(path.toString(), e);
                    }
                    return DatabaseMgr.connectDatasetGraph(path.toString());
                })
                .orElseGet(DatabaseMgr::createDatasetGraph);
    }
}
