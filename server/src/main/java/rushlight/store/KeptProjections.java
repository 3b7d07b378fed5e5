package rushlight.store;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.Dataset;
import org.apache.jena.vocabulary.RDF;
import rushlight.film.Projection;
import rushlight.knowledge.Rl;

/** What evaluators think players will be, in the graph of what people keep. Every version stays there. */
public final class KeptProjections {
    private static final Node PROJECTION = Rl.term("Projection");
    private static final Node VERSION = Rl.term("version");
    private static final Node TAKEN_BACK = Rl.term("takenBack");
    private static final Node ALL = Addresses.node("projections");
    private static final List<String> TEXTS =
            List.of("evaluator", "forRole", "readiness", "ceiling", "floor", "risk", "words", "ownScale", "tier");

    private final Graph graph;

    KeptProjections(Graph graph) {
        this.graph = graph;
    }

    /** What is kept in a store; used within one of its transactions. */
    public static KeptProjections in(Dataset data) {
        return new KeptProjections(data.asDatasetGraph().getGraph(KeptThings.GRAPH));
    }

    /**
     * One version of a projection.
     *
     * @param projection what it says
     * @param version counted from 1 for each prospect and evaluator
     * @param when it was kept
     * @param takenBack whether this version says that there is none any more; its words are those before
     */
    public record Kept(Projection projection, int version, Instant when, boolean takenBack) {}

    /** How often anything of this changed. */
    public long revision() {
        return Literals.text(graph, ALL, Terms.REVISION).map(Long::parseLong).orElse(0L);
    }

    /** Every version of one prospect, by evaluator, the newest first. */
    public List<Kept> of(String prospect) {
        return graph
                .find(Node.ANY, Terms.PROSPECT, Addresses.prospect(prospect))
                .mapWith(Triple::getSubject)
                .toList()
                .stream()
                .filter(node -> graph.contains(node, RDF.type.asNode(), PROJECTION))
                .map(node -> kept(prospect, node))
                .sorted(Comparator.comparing((Kept one) -> one.projection().by())
                        .thenComparing(one -> -one.version()))
                .toList();
    }

    /** Adds a version; none is ever changed. */
    public void add(Kept one) {
        Projection said = one.projection();
        Node node = Addresses.node("projection", said.prospect(), said.by(), Integer.toString(one.version()));
        add(node, RDF.type.asNode(), PROJECTION);
        add(node, Terms.PROSPECT, Addresses.prospect(said.prospect()));
        texts(said).forEach((name, value) -> {
            if (!value.isEmpty()) {
                add(node, Rl.term(name), Literals.of(value));
            }
        });
        add(node, VERSION, Literals.of(one.version()));
        Node when = Literals.of(one.when());
        add(node, Terms.GENERATED, when);
        if (one.takenBack()) {
            add(node, TAKEN_BACK, when);
        }
        Node next = Literals.of(revision() + 1);
        graph.remove(ALL, Terms.REVISION, Node.ANY);
        add(ALL, Terms.REVISION, next);
    }

    private static Map<String, String> texts(Projection said) {
        List<String> values = List.of(
                said.evaluator(),
                said.role(),
                said.readiness(),
                said.ceiling(),
                said.floor(),
                said.risk(),
                said.words(),
                said.scale(),
                said.tier());
        Map<String, String> texts = new TreeMap<>();
        for (int i = 0; i < values.size(); i++) {
            texts.put(TEXTS.get(i), values.get(i));
        }
        return texts;
    }

    private Kept kept(String prospect, Node node) {
        List<String> said = TEXTS.stream()
                .map(name -> Literals.text(graph, node, Rl.term(name)).orElse(""))
                .toList();
        return new Kept(
                new Projection(
                        prospect,
                        said.get(0),
                        said.get(1),
                        said.get(2),
                        said.get(3),
                        said.get(4),
                        said.get(5),
                        said.get(6),
                        said.get(7),
                        said.get(8)),
                Literals.text(graph, node, VERSION).map(Integer::parseInt).orElse(1),
                Literals.text(graph, node, Terms.GENERATED).map(Instant::parse).orElse(Instant.EPOCH),
                graph.contains(node, TAKEN_BACK, Node.ANY));
    }

    private void add(Node subject, Node property, Node object) {
        graph.add(Triple.create(subject, property, object));
    }
}
