package rushlight.store;

import java.time.Instant;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.Dataset;
import org.apache.jena.vocabulary.RDF;
import rushlight.knowledge.Rl;

/** Suggestions that somebody wants to see no more, by their keys, in the graph of what people keep. */
public final class KeptIgnored {
    private static final Node IGNORED = Rl.term("IgnoredSuggestion");
    /** The kind of what is ignored, among the things that are kept. */
    public static final String KIND = "ignored";

    private final Graph graph;

    private KeptIgnored(Graph graph) {
        this.graph = graph;
    }

    /** What is kept in a store; used within one of its transactions. */
    public static KeptIgnored in(Dataset data) {
        return new KeptIgnored(data.asDatasetGraph().getGraph(KeptThings.GRAPH));
    }

    /** The keys of all. */
    public Set<String> all() {
        return graph.find(Node.ANY, RDF.type.asNode(), IGNORED).mapWith(Triple::getSubject).toList().stream()
                .map(Addresses::last)
                .collect(Collectors.toSet());
    }

    /** Ignores one from now on. */
    public void put(String key, Instant when) {
        Node node = Addresses.node(KIND, key);
        graph.remove(node, Node.ANY, Node.ANY);
        graph.add(Triple.create(node, RDF.type.asNode(), IGNORED));
        graph.add(Triple.create(node, Terms.GENERATED, Literals.of(when)));
    }
}
