package rushlight.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.Dataset;
import org.apache.jena.vocabulary.RDF;
import rushlight.knowledge.Rl;

/** What evaluators put into the reports of prospects, in the graph of what people keep. */
public final class KeptReports {
    private static final Node REPORT = Rl.term("Report");
    private static final Node WORDS = Rl.term("words");
    private static final Node SPEAKER = Rl.term("speaker");
    private static final Node PARTS = Rl.term("reportParts");

    private final Graph graph;

    KeptReports(Graph graph) {
        this.graph = graph;
    }

    /** What is kept in a store; used within one of its transactions. */
    public static KeptReports in(Dataset data) {
        return new KeptReports(data.asDatasetGraph().getGraph(KeptThings.GRAPH));
    }

    /**
     * What was put into one report.
     *
     * @param prospect id of the prospect
     * @param summary the evaluator's words; may be empty
     * @param author who wrote them; may be empty
     * @param parts the parts wanted, in order
     * @param revision how often it was kept, from 1
     * @param when when it was kept last
     */
    public record Kept(
            String prospect, String summary, String author, List<String> parts, long revision, Instant when) {
        public Kept {
            parts = List.copyOf(parts);
        }
    }

    /** What was put into the report of this prospect. */
    public Optional<Kept> of(String prospect) {
        Node node = node(prospect);
        if (!graph.contains(node, RDF.type.asNode(), REPORT)) {
            return Optional.empty();
        }
        String parts = text(node, PARTS);
        return Optional.of(new Kept(
                prospect,
                text(node, WORDS),
                text(node, SPEAKER),
                parts.isEmpty() ? List.of() : List.of(parts.split(" ", -1)),
                Long.parseLong(text(node, Terms.REVISION)),
                Instant.parse(text(node, Terms.GENERATED))));
    }

    /** Keeps it in place of what was kept for this prospect. */
    public void put(Kept one) {
        Node node = node(one.prospect());
        graph.remove(node, Node.ANY, Node.ANY);
        add(node, RDF.type.asNode(), REPORT);
        add(node, Terms.PROSPECT, Addresses.prospect(one.prospect()));
        add(node, WORDS, Literals.of(one.summary()));
        add(node, SPEAKER, Literals.of(one.author()));
        add(node, PARTS, Literals.of(String.join(" ", one.parts())));
        add(node, Terms.REVISION, Literals.of(one.revision()));
        add(node, Terms.GENERATED, Literals.of(one.when()));
    }

    private String text(Node node, Node property) {
        return Literals.text(graph, node, property).orElse("");
    }

    private void add(Node subject, Node property, Node object) {
        graph.add(Triple.create(subject, property, object));
    }

    private static Node node(String prospect) {
        return Addresses.node("report", prospect);
    }
}
