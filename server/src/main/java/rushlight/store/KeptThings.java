package rushlight.store;

import java.time.Instant;
import java.util.List;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.Dataset;
import org.apache.jena.vocabulary.RDF;
import org.apache.jena.vocabulary.RDFS;
import rushlight.knowledge.Rl;

/** Texts that people keep under a name, in a graph of their own beside the film. */
public final class KeptThings {
    static final Node GRAPH = NodeFactory.createURI(Addresses.DATA + "kept");

    private static final Node SAVED_QUESTION = Rl.term("SavedQuestion");
    private static final Node ASKS = Rl.term("asks");

    private final Graph graph;

    private KeptThings(Graph graph) {
        this.graph = graph;
    }

    /** What is kept in a store; used within one of its transactions. */
    public static KeptThings in(Dataset data) {
        return new KeptThings(data.asDatasetGraph().getGraph(GRAPH));
    }

    /**
     * Something that is kept.
     *
     * @param kind what it is, as it stands in its address
     * @param id the name as it stands in its address
     * @param name what it goes by
     * @param text what is kept
     * @param note what it is for, may be empty
     * @param when it was kept
     */
    public record Kept(String kind, String id, String name, String text, String note, Instant when) {}

    /** What was said of players. */
    public KeptOpinions opinions() {
        return new KeptOpinions(graph);
    }

    /** What evaluators think players will be. */
    public KeptProjections projections() {
        return new KeptProjections(graph);
    }

    /** What was put into reports. */
    public KeptReports reports() {
        return new KeptReports(graph);
    }

    /** Plans of practice. */
    public KeptPlans plans() {
        return new KeptPlans(graph);
    }

    /** Everything of a kind. */
    public List<Kept> all(String kind) {
        String start = Addresses.DATA + kind + "/";
        return graph.find(Node.ANY, RDF.type.asNode(), SAVED_QUESTION).mapWith(Triple::getSubject).toList().stream()
                .filter(node -> node.getURI().startsWith(start))
                .map(node -> kept(kind, node))
                .toList();
    }

    /** Keeps something in place of what was kept under its name. */
    public void put(Kept kept) {
        Node node = Addresses.node(kept.kind(), kept.id());
        graph.remove(node, Node.ANY, Node.ANY);
        graph.add(Triple.create(node, RDF.type.asNode(), SAVED_QUESTION));
        graph.add(Triple.create(node, RDFS.label.asNode(), Literals.of(kept.name())));
        graph.add(Triple.create(node, ASKS, Literals.of(kept.text())));
        if (!kept.note().isEmpty()) {
            graph.add(Triple.create(node, Terms.NOTE, Literals.of(kept.note())));
        }
        graph.add(Triple.create(node, Terms.GENERATED, Literals.of(kept.when())));
    }

    /** Forgets what is kept under a name; whether there was anything. */
    public boolean remove(String kind, String id) {
        Node node = Addresses.node(kind, id);
        boolean known = graph.contains(node, Node.ANY, Node.ANY);
        graph.remove(node, Node.ANY, Node.ANY);
        return known;
    }

    private Kept kept(String kind, Node node) {
        return new Kept(
                kind,
                Addresses.last(node),
                Literals.text(graph, node, RDFS.label.asNode()).orElse(""),
                Literals.text(graph, node, ASKS).orElse(""),
                Literals.text(graph, node, Terms.NOTE).orElse(""),
                Literals.text(graph, node, Terms.GENERATED).map(Instant::parse).orElse(Instant.EPOCH));
    }
}
