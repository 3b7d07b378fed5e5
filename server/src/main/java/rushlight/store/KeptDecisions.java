package rushlight.store;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.Dataset;
import org.apache.jena.vocabulary.RDF;
import org.apache.jena.vocabulary.RDFS;
import rushlight.knowledge.Rl;

/**
 * Decisions on files of notes, each set one text, in the graph of what people keep; what a set was before stands in the
 * graph of the history under its address with {@code /was/} and its version behind it.
 */
public final class KeptDecisions {
    private static final Node SET = Rl.term("NotesDecisions");
    private static final Node DECIDED = Rl.term("decided");
    private static final String KIND = "notes";
    private static final int MOST_BEFORE = 50;

    /** A version that stood for less time than this is no step to go back to. */
    private static final Duration STEP = Duration.ofMinutes(10);

    private final Graph kept;
    private final Graph history;

    private KeptDecisions(Graph kept, Graph history) {
        this.kept = kept;
        this.history = history;
    }

    /** What is kept in a store; used within one of its transactions. */
    public static KeptDecisions in(Dataset data) {
        return new KeptDecisions(
                data.asDatasetGraph().getGraph(KeptThings.GRAPH),
                data.asDatasetGraph().getGraph(Addresses.HISTORY));
    }

    /**
     * A set of decisions.
     *
     * @param id the name in its address
     * @param file name of the file of notes
     * @param version counts from 1
     * @param when when it was kept
     * @param text what was decided
     */
    public record Kept(String id, String file, long version, Instant when, String text) {}

    /** All sets, in order of their ids. */
    public List<Kept> all() {
        return kept.find(Node.ANY, RDF.type.asNode(), SET).mapWith(Triple::getSubject).toList().stream()
                .map(node -> read(kept, node, Addresses.last(node)))
                .sorted(Comparator.comparing(Kept::id))
                .toList();
    }

    /** The set of this id. */
    public Optional<Kept> one(String id) {
        Node node = node(id);
        return kept.contains(node, RDF.type.asNode(), SET) ? Optional.of(read(kept, node, id)) : Optional.empty();
    }

    /** What the set of this id was before, the newest first. */
    public List<Kept> before(String id) {
        return history.find(Node.ANY, Terms.VERSION_OF, node(id)).mapWith(Triple::getSubject).toList().stream()
                .map(node -> read(history, node, id))
                .sorted(Comparator.comparing(Kept::version).reversed())
                .toList();
    }

    /**
     * Keeps a set in place of the one of its id.
     *
     * @param aside whether the former one is a step to go back to, however short it stood
     */
    public void put(Kept set, boolean aside) {
        Optional<Kept> former = one(set.id());
        if (former.isPresent() && (aside || former.get().when().plus(STEP).isBefore(set.when()))) {
            Node was = was(former.get());
            write(history, was, former.get());
            history.add(Triple.create(was, Terms.VERSION_OF, node(set.id())));
            before(set.id()).stream().skip(MOST_BEFORE).forEach(old -> history.remove(was(old), Node.ANY, Node.ANY));
        }
        Node node = node(set.id());
        kept.remove(node, Node.ANY, Node.ANY);
        write(kept, node, set);
    }

    private static void write(Graph graph, Node node, Kept set) {
        graph.add(Triple.create(node, RDF.type.asNode(), SET));
        graph.add(Triple.create(node, RDFS.label.asNode(), Literals.of(set.file())));
        graph.add(Triple.create(node, Terms.REVISION, Literals.of(set.version())));
        graph.add(Triple.create(node, Terms.GENERATED, Literals.of(set.when())));
        graph.add(Triple.create(node, DECIDED, Literals.of(set.text())));
    }

    private static Kept read(Graph graph, Node node, String id) {
        return new Kept(
                id,
                Literals.text(graph, node, RDFS.label.asNode()).orElse(""),
                Literals.text(graph, node, Terms.REVISION).map(Long::parseLong).orElse(0L),
                Literals.text(graph, node, Terms.GENERATED).map(Instant::parse).orElse(Instant.EPOCH),
                Literals.text(graph, node, DECIDED).orElse(""));
    }

    private static Node node(String id) {
        return Addresses.node(KIND, id);
    }

    private static Node was(Kept set) {
        return Addresses.node(KIND, set.id(), "was", Long.toString(set.version()));
    }
}
