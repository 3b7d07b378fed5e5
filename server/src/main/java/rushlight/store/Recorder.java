package rushlight.store;

import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.jena.atlas.iterator.Iter;
import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.DatasetGraphWrapper;
import org.apache.jena.sparql.core.GraphView;
import org.apache.jena.sparql.core.Quad;

/**
 * A store that notes what one transaction really changes: what is added twice, or taken out and put back, is no change. It
 * notes statements as the store gives them back, for a store may write a number in another way than it was given.
 */
final class Recorder extends DatasetGraphWrapper {
    private final Set<Quad> removed = new LinkedHashSet<>();
    private final Set<Quad> added = new LinkedHashSet<>();

    Recorder(DatasetGraph data) {
        super(data);
    }

    Difference difference() {
        return new Difference(removed, added);
    }

    @Override
    public Graph getDefaultGraph() {
        return GraphView.createDefaultGraph(this);
    }

    @Override
    public Graph getGraph(Node graph) {
        return GraphView.createNamedGraph(this, graph);
    }

    @Override
    public void add(Quad quad) {
        if (stored(quad).isPresent()) {
            return;
        }
        get().add(quad);
        Quad now = isKeptAsGiven(quad.getObject()) ? plain(quad) : stored(quad).orElse(quad);
        if (!removed.remove(now)) {
            added.add(now);
        }
    }

    @Override
    public void add(Node graph, Node subject, Node predicate, Node object) {
        add(Quad.create(graph, subject, predicate, object));
    }

    @Override
    public void delete(Quad quad) {
        Optional<Quad> before = stored(quad);
        if (before.isEmpty()) {
            return;
        }
        get().delete(quad);
        if (!added.remove(before.get())) {
            removed.add(before.get());
        }
    }

    @Override
    public void delete(Node graph, Node subject, Node predicate, Node object) {
        delete(Quad.create(graph, subject, predicate, object));
    }

    @Override
    public void deleteAny(Node graph, Node subject, Node predicate, Node object) {
        List<Quad> all = Iter.toList(get().find(graph, subject, predicate, object));
        all.forEach(this::delete);
    }

    @Override
    public void addGraph(Node graph, Graph triples) {
        deleteAny(graph, Node.ANY, Node.ANY, Node.ANY);
        triples.find().forEachRemaining(t -> add(Quad.create(graph, t)));
    }

    @Override
    public void removeGraph(Node graph) {
        deleteAny(graph, Node.ANY, Node.ANY, Node.ANY);
    }

    @Override
    public void clear() {
        deleteAny(Node.ANY, Node.ANY, Node.ANY, Node.ANY);
    }

    private Optional<Quad> stored(Quad quad) {
        Iterator<Quad> found = get().find(quad.getGraph(), quad.getSubject(), quad.getPredicate(), quad.getObject());
        try {
            return found.hasNext() ? Optional.of(plain(found.next())) : Optional.empty();
        } finally {
            Iter.close(found);
        }
    }

    private static boolean isKeptAsGiven(Node object) {
        return !object.isLiteral() || object.getLiteralDatatype().equals(XSDDatatype.XSDstring);
    }

    /** The film's own graph has several names; one of them is enough. */
    private static Quad plain(Quad quad) {
        return quad.isDefaultGraph() && !quad.getGraph().equals(Quad.defaultGraphNodeGenerated)
                ? Quad.create(Quad.defaultGraphNodeGenerated, quad.asTriple())
                : quad;
    }
}
