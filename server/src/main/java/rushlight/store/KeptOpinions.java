package rushlight.store;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.Dataset;
import org.apache.jena.vocabulary.RDF;
import rushlight.film.Opinion;
import rushlight.knowledge.Rl;

/** What was said of players, in the graph of what people keep. What is taken back stays there and can be brought back. */
public final class KeptOpinions {
    private static final Node OPINION = Rl.term("Opinion");
    private static final Node SPEAKS_OF = Rl.term("speaksOf");
    private static final Node ASSERTED = Rl.term("asserted");
    private static final Node AGAINST = Rl.term("spokenAgainst");
    private static final Node SPEAKER = Rl.term("speaker");
    private static final Node WORDS = Rl.term("words");
    private static final Node AT = Rl.term("saidAt");
    private static final Node TAKEN_BACK = Rl.term("takenBack");
    private static final Node ALL = Addresses.node("opinions");

    private final Graph graph;

    KeptOpinions(Graph graph) {
        this.graph = graph;
    }

    /** What is kept in a store; used within one of its transactions. */
    public static KeptOpinions in(Dataset data) {
        return new KeptOpinions(data.asDatasetGraph().getGraph(KeptThings.GRAPH));
    }

    /**
     * An opinion that is kept.
     *
     * @param opinion what was said
     * @param kept when it was taken in
     * @param takenBack when it was taken back; empty where it stands
     */
    public record Kept(Opinion opinion, Instant kept, Optional<Instant> takenBack) {}

    /** How often anything of this changed. */
    public long revision() {
        return Literals.text(graph, ALL, Terms.REVISION).map(Long::parseLong).orElse(0L);
    }

    /** All of them, those taken back too, in order of player, file, time and id. */
    public List<Kept> all() {
        return graph.find(Node.ANY, RDF.type.asNode(), OPINION).mapWith(Triple::getSubject).toList().stream()
                .map(this::kept)
                .sorted(Comparator.comparing((Kept k) -> k.opinion().prospect())
                        .thenComparing(k -> k.opinion().source())
                        .thenComparing(k -> k.opinion().at().orElse(0))
                        .thenComparing(k -> k.opinion().id()))
                .toList();
    }

    /** Keeps it in place of the same one; one that was taken back stands again. */
    public void put(Kept one) {
        Opinion opinion = one.opinion();
        Node node = node(opinion.id());
        graph.remove(node, Node.ANY, Node.ANY);
        add(node, RDF.type.asNode(), OPINION);
        add(node, Terms.PROSPECT, Addresses.prospect(opinion.prospect()));
        add(node, SPEAKS_OF, Rl.concept(opinion.concept()));
        add(node, ASSERTED, Literals.of(opinion.polarity().slug()));
        for (int i = 0; i < opinion.against().size(); i++) {
            add(node, AGAINST, Rl.concept(opinion.against().get(i)));
        }
        if (!opinion.speaker().isEmpty()) {
            add(node, SPEAKER, Literals.of(opinion.speaker()));
        }
        add(node, WORDS, Literals.of(opinion.words()));
        opinion.at().ifPresent(at -> add(node, AT, Literals.of(Double.toString(at))));
        add(node, Terms.FILE_NAME, Literals.of(opinion.source()));
        add(node, Terms.GENERATED, Literals.of(one.kept()));
        one.takenBack().ifPresent(when -> add(node, TAKEN_BACK, Literals.of(when)));
        raise();
    }

    private void raise() {
        Node next = Literals.of(revision() + 1);
        graph.remove(ALL, Terms.REVISION, Node.ANY);
        add(ALL, Terms.REVISION, next);
    }

    private Kept kept(Node node) {
        return new Kept(
                new Opinion(
                        Addresses.last(node),
                        linked(node, Terms.PROSPECT).map(Addresses::last).orElse(""),
                        Literals.text(graph, node, SPEAKER).orElse(""),
                        Literals.text(graph, node, WORDS).orElse(""),
                        Literals.text(graph, node, AT)
                                .map(at -> OptionalDouble.of(Double.parseDouble(at)))
                                .orElseGet(OptionalDouble::empty),
                        Literals.text(graph, node, Terms.FILE_NAME).orElse(""),
                        Opinion.Polarity.of(Literals.text(graph, node, ASSERTED).orElse("uncertain")),
                        linked(node, SPEAKS_OF).map(Rl::slug).orElse(""),
                        graph.find(node, AGAINST, Node.ANY).mapWith(t -> Rl.slug(t.getObject())).toList().stream()
                                .sorted()
                                .toList()),
                Literals.text(graph, node, Terms.GENERATED).map(Instant::parse).orElse(Instant.EPOCH),
                Literals.text(graph, node, TAKEN_BACK).map(Instant::parse));
    }

    private Optional<Node> linked(Node node, Node property) {
        return graph.find(node, property, Node.ANY).mapWith(Triple::getObject).nextOptional();
    }

    private void add(Node subject, Node property, Node object) {
        graph.add(Triple.create(subject, property, object));
    }

    private static Node node(String id) {
        return Addresses.node("opinion", id);
    }
}
