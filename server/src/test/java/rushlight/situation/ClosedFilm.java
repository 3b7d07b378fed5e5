package rushlight.situation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.query.QueryExecution;
import org.apache.jena.query.QuerySolution;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.shacl.ShaclValidator;
import org.apache.jena.shacl.Shapes;
import org.apache.jena.shacl.vocabulary.SHACL;
import org.apache.jena.sparql.core.DatasetGraphFactory;
import org.apache.jena.sparql.graph.GraphFactory;
import org.apache.jena.update.UpdateAction;
import org.apache.jena.vocabulary.RDF;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;
import rushlight.store.LogGraph;

/** Film as it is stored, beside the book, closed by SPARQL: what engines that are not ours look at. */
final class ClosedFilm {
    private static final Path CLOSING = Path.of("src", "test", "resources", "situations", "close.ru");
    private static final Node READING = Rl.term("Reading");
    private static final Node PLACE = NodeFactory.createURI("urn:test:place");
    private static final int PARTS = 8;
    private static final String DENIED = "urn:test:denied:";

    private final Graph graph = GraphFactory.createDefaultGraph();
    private final Map<Of, Node> nodes = new HashMap<>();
    private final Map<Node, Of> readings = new LinkedHashMap<>();

    /** Names one reading. */
    record Of(RepId rep, String evaluator) {
        static Of reading(Reading reading) {
            return new Of(reading.rep(), reading.evaluator());
        }

        @Override
        public String toString() {
            return rep.prospect() + " / " + rep.game() + " / " + rep.rep() + " by " + evaluator;
        }
    }

    /** Stores the logs with the classes the rules concluded, and closes them. */
    ClosedFilm(Ontology ontology, Taxonomy taxonomy, Collection<LogFacts> logs) {
        ontology.graph().find().forEachRemaining(graph::add);
        LogGraph writer = new LogGraph(taxonomy.film());
        List<String> evaluators =
                logs.stream().map(log -> log.log().evaluator()).distinct().toList();
        for (LogFacts log : logs) {
            List<Node> stored = new ArrayList<>();
            writer.write(log.log(), classes(log), "", Instant.EPOCH, triple -> {
                graph.add(triple);
                note(triple, stored, evaluators.indexOf(log.log().evaluator()));
            });
            for (int i = 0; i < stored.size(); i++) {
                Of reading = Of.reading(log.log().readings().get(i));
                nodes.put(reading, stored.get(i));
                readings.put(stored.get(i), reading);
            }
        }
        int at = 0;
        for (Node reading : readings.keySet()) {
            graph.add(reading, RDF.type.asNode(), part(at++ % PARTS));
        }
        UpdateAction.parseExecute(text(), DatasetGraphFactory.wrap(graph));
    }

    /** Every reading. */
    Set<Of> readings() {
        return nodes.keySet();
    }

    /** The values of a facet of a reading, concepts by slug. */
    Set<String> values(Of reading, String facet) {
        Set<String> values = new TreeSet<>();
        graph.find(nodes.get(reading), Rl.term(facet), Node.ANY).forEachRemaining(triple -> {
            Node value = triple.getObject();
            values.add(value.isLiteral() ? value.getLiteralLexicalForm() : Rl.slug(value));
        });
        return values;
    }

    /** The readings that a SPARQL query finds. */
    Set<Of> ask(String query) {
        Set<Of> found = new HashSet<>();
        select(query, row -> found.add(reading(row.getResource("reading").asNode())));
        return found;
    }

    /** The counts by prospect that a SPARQL query finds. */
    SortedMap<String, Integer> count(String query) {
        SortedMap<String, Integer> counts = new TreeMap<>();
        select(
                query,
                row -> counts.put(
                        Rl.slug(row.getResource("prospect").asNode()),
                        row.getLiteral("count").getInt()));
        return counts;
    }

    /**
     * The readings that conform to each shape, by jena-shacl. It is asked about the readings that somebody else says fit,
     * and about an eighth of all, another eighth from shape to shape: all of them would take minutes. It reports what does
     * not conform, and of most shapes that is nearly everything: so it is asked for what breaks the denial of the shape.
     *
     * @param fitting the readings that somebody else says fit, by the address of the shape
     */
    Map<String, Set<Of>> validate(Graph shapes, SortedMap<String, Set<Of>> fitting) {
        Map<String, Set<Of>> conforming = new ConcurrentHashMap<>();
        List<String> names = List.copyOf(fitting.keySet());
        IntStream.range(0, PARTS).parallel().forEach(part -> {
            Graph asked = GraphFactory.createDefaultGraph();
            shapes.find().forEachRemaining(asked::add);
            for (int i = part; i < names.size(); i += PARTS) {
                Node denied = deny(names.get(i), asked);
                asked.add(denied, SHACL.targetClass, part(part));
                for (Of reading : fitting.getOrDefault(names.get(i), Set.of())) {
                    asked.add(denied, SHACL.targetNode, nodes.get(reading));
                }
            }
            ShaclValidator.get()
                    .validate(Shapes.parse(asked), graph)
                    .getEntries()
                    .forEach(entry -> conforming
                            .computeIfAbsent(
                                    entry.source().getURI().substring(DENIED.length()), name -> new HashSet<>())
                            .add(reading(entry.focusNode())));
        });
        return conforming;
    }

    private static Node deny(String name, Graph asked) {
        Node denied = NodeFactory.createURI(DENIED + name);
        asked.add(denied, RDF.type.asNode(), SHACL.NodeShape);
        asked.add(denied, SHACL.not, NodeFactory.createURI(name));
        return denied;
    }

    private static Node part(int number) {
        return NodeFactory.createURI("urn:test:part:" + number);
    }

    private Of reading(Node node) {
        return Objects.requireNonNull(readings.get(node), node.toString());
    }

    private void select(String query, Consumer<QuerySolution> row) {
        try (QueryExecution execution = QueryExecution.create(query, ModelFactory.createModelForGraph(graph))) {
            execution.execSelect().forEachRemaining(row);
        }
    }

    private void note(Triple triple, List<Node> stored, int place) {
        if (!triple.getPredicate().equals(RDF.type.asNode())) {
            return;
        }
        if (triple.getObject().equals(READING)) {
            stored.add(triple.getSubject());
        } else if (triple.getObject().equals(Rl.term("Log"))) {
            graph.add(triple.getSubject(), PLACE, NodeFactory.createLiteralByValue(place));
        }
    }

    private static List<Set<String>> classes(LogFacts log) {
        return log.facts().stream().map(facts -> facts.tagged("repClass")).toList();
    }

    private static String text() {
        try {
            return Files.readString(CLOSING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
