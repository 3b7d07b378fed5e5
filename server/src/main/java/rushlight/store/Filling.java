package rushlight.store;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.sparql.graph.GraphFactory;
import rushlight.store.Aligned.How;
import rushlight.store.RemoteStoreException.Kind;

/**
 * Fills an empty store with what a folder holds. Nobody takes a store for film that is still being filled: a mark stands in it
 * meanwhile. Where it was cut off, the folder that began it begins again.
 */
final class Filling {
    private static final int AT_ONCE = 50_000;

    private final Transactions here;
    private final RemoteStore there;

    Filling(Transactions here, RemoteStore there) {
        this.here = here;
        this.there = there;
    }

    Aligned begin() {
        Standing mine = new Standing(
                Optional.of(Standing.fresh()), Optional.empty(), Optional.of(Standing.fresh()), Optional.empty());
        Standing before = here.read(Standing::of);
        // First here, so that this folder knows its own mark if it is cut off.
        note(mine);
        try {
            there.beginFilling(mine);
            demand(mine, there.state());
        } catch (RemoteStoreException e) {
            if (!e.isAway()) {
                forget(mine, e);
                note(before);
            }
            throw e;
        }
        return fill(mine);
    }

    /** A store that lets nothing be begun may not let it be taken back either: why it did not begin is what is told. */
    private void forget(Standing mine, RemoteStoreException why) {
        try {
            there.forgetFilling(mine);
        } catch (RemoteStoreException e) {
            why.addSuppressed(e);
        }
    }

    Aligned resume(Standing mine) {
        for (Node graph : here.read(Filling::graphs)) {
            there.clear(graph);
        }
        return fill(mine);
    }

    private Aligned fill(Standing mine) {
        long sent = here.read(data -> {
            long all = 0;
            for (Node graph : graphs(data)) {
                all += send(data, graph);
            }
            return all;
        });
        String filling = mine.filling().orElseThrow();
        there.endFilling(filling);
        Standing full = mine.at(filling);
        demand(full, there.state());
        note(full);
        return new Aligned(How.SENT, sent);
    }

    private long send(DatasetGraph data, Node graph) {
        long sent = 0;
        Graph some = GraphFactory.createDefaultGraph();
        for (Iterator<Quad> all = data.find(graph, Node.ANY, Node.ANY, Node.ANY); all.hasNext(); ) {
            some.add(all.next().asTriple());
            if (some.size() == AT_ONCE || !all.hasNext()) {
                there.add(graph, some);
                sent += some.size();
                some = GraphFactory.createDefaultGraph();
            }
        }
        return sent;
    }

    private static List<Node> graphs(DatasetGraph data) {
        List<Node> graphs = new ArrayList<>(List.of(Quad.defaultGraphNodeGenerated));
        data.listGraphNodes().forEachRemaining(graphs::add);
        graphs.remove(Standing.GRAPH);
        return graphs;
    }

    private void note(Standing standing) {
        here.alone(data -> {
            standing.write(data);
            return standing;
        });
    }

    private void demand(Standing wanted, Standing found) {
        if (!wanted.equals(found)) {
            throw new RemoteStoreException(
                    Kind.AWAY,
                    "Somebody else began to fill the store at " + there.address() + " in the same moment. Nothing was"
                            + " changed. Do it again in a while.",
                    null);
        }
    }
}
