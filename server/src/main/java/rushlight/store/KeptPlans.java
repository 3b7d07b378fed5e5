package rushlight.store;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.Dataset;
import org.apache.jena.vocabulary.RDF;
import rushlight.knowledge.Rl;

/** Plans of practice, in the graph of what people keep. Every version stays there, as it was written. */
public final class KeptPlans {
    private static final Node PLAN = Rl.term("PracticePlan");
    private static final Node VERSION = Rl.term("version");
    private static final Node TAKEN_BACK = Rl.term("takenBack");
    private static final Node ASKED = Rl.term("planRequest");
    private static final Node SHEET = Rl.term("planSheet");
    private static final Node SPEAKER = Rl.term("speaker");

    private final Graph graph;

    KeptPlans(Graph graph) {
        this.graph = graph;
    }

    /** What is kept in a store; used within one of its transactions. */
    public static KeptPlans in(Dataset data) {
        return new KeptPlans(data.asDatasetGraph().getGraph(KeptThings.GRAPH));
    }

    /**
     * One version of a plan.
     *
     * @param prospect id of the prospect
     * @param version counted from 1 for each prospect
     * @param request what it was asked for with, as it was written
     * @param sheet the plan, as it was written
     * @param by who kept it; may be empty
     * @param note why; may be empty
     * @param film the revision of the film it was made from
     * @param when when it was kept
     * @param takenBack whether this version says that there is none any more
     */
    public record Kept(
            String prospect,
            int version,
            String request,
            String sheet,
            String by,
            String note,
            long film,
            Instant when,
            boolean takenBack) {}

    /** Every version of one prospect's plan, the newest first. */
    public List<Kept> of(String prospect) {
        return nodes(prospect)
                .map(node -> kept(prospect, node))
                .sorted(Comparator.comparingInt(Kept::version).reversed())
                .toList();
    }

    /** The number of the newest version of one prospect's plan; 0 where there never was one. Reads no plan. */
    public int newest(String prospect) {
        return nodes(prospect).mapToInt(this::version).max().orElse(0);
    }

    private Stream<Node> nodes(String prospect) {
        return graph
                .find(Node.ANY, Terms.PROSPECT, Addresses.prospect(prospect))
                .mapWith(Triple::getSubject)
                .toList()
                .stream()
                .filter(node -> graph.contains(node, RDF.type.asNode(), PLAN));
    }

    private int version(Node node) {
        return Integer.parseInt(text(node, VERSION));
    }

    /** Adds a version; none is ever changed. */
    public void add(Kept one) {
        Node node = Addresses.node("plan", one.prospect(), Integer.toString(one.version()));
        Node when = Literals.of(one.when());
        add(node, RDF.type.asNode(), PLAN);
        add(node, Terms.PROSPECT, Addresses.prospect(one.prospect()));
        add(node, VERSION, Literals.of(one.version()));
        add(node, ASKED, Literals.of(one.request()));
        add(node, SHEET, Literals.of(one.sheet()));
        add(node, SPEAKER, Literals.of(one.by()));
        add(node, Terms.NOTE, Literals.of(one.note()));
        add(node, Terms.REVISION, Literals.of(one.film()));
        add(node, Terms.GENERATED, when);
        if (one.takenBack()) {
            add(node, TAKEN_BACK, when);
        }
    }

    private Kept kept(String prospect, Node node) {
        return new Kept(
                prospect,
                version(node),
                text(node, ASKED),
                text(node, SHEET),
                text(node, SPEAKER),
                text(node, Terms.NOTE),
                Long.parseLong(text(node, Terms.REVISION)),
                Instant.parse(text(node, Terms.GENERATED)),
                graph.contains(node, TAKEN_BACK, Node.ANY));
    }

    private String text(Node node, Node property) {
        return Literals.text(graph, node, property).orElse("");
    }

    private void add(Node subject, Node property, Node object) {
        graph.add(Triple.create(subject, property, object));
    }
}
