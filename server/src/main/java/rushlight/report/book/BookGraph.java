package rushlight.report.book;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.riot.out.NodeFmtLib;
import org.apache.jena.shared.PrefixMapping;
import org.apache.jena.sparql.graph.GraphFactory;
import org.apache.jena.vocabulary.DCTerms;
import org.apache.jena.vocabulary.OWL2;
import org.apache.jena.vocabulary.RDF;
import org.apache.jena.vocabulary.RDFS;
import org.apache.jena.vocabulary.SKOS;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;

/**
 * Everything the book says in one graph that is the same each time: blank nodes are named after what they say and where they
 * hang, since a reader of Turtle names them by chance.
 */
final class BookGraph {
    private final Graph named = GraphFactory.createDefaultGraph();
    private final Map<Node, Node> blanks = new HashMap<>();

    private BookGraph(Graph all) {
        Map<Node, String> says = new HashMap<>();
        List<Triple> rooted = new ArrayList<>();
        all.find().filterDrop(t -> t.getSubject().isBlank()).forEachRemaining(rooted::add);
        Comparator<Triple> order = Comparator.<Triple, String>comparing(t -> text(t.getSubject()))
                .thenComparing(t -> text(t.getPredicate()))
                .thenComparing(t -> says(t.getObject(), all, says));
        rooted.sort(order);
        int[] twins = {0};
        for (Triple t : rooted) {
            String place = text(t.getSubject()) + text(t.getPredicate());
            named.add(t.getSubject(), t.getPredicate(), name(t.getObject(), place, all, says, twins));
        }
        if (named.size() != all.size()) {
            throw new IllegalStateException("A blank node of the book hangs on nothing or on two things: "
                    + (all.size() - named.size()) + " statements would be lost.");
        }
    }

    /** The shipped files, the lessons and the user's own terms. */
    static Graph of(Ontology ontology) {
        Graph all = GraphFactory.createDefaultGraph();
        ontology.graph().find().forEachRemaining(all::add);
        ontology.lessons().find().forEachRemaining(all::add);
        Graph graph = new BookGraph(all).named;
        graph.getPrefixMapping().setNsPrefixes(prefixes());
        return graph;
    }

    /** The prefixes of the book, in order. */
    static PrefixMapping prefixes() {
        Map<String, String> map = new TreeMap<>();
        map.put("dct", DCTerms.NS);
        map.put("kb", Rl.CONCEPT);
        map.put("owl", OWL2.NS);
        map.put("rdf", RDF.uri);
        map.put("rdfs", RDFS.uri);
        map.put("rl", Rl.SCHEMA);
        map.put("sh", "http://www.w3.org/ns/shacl#");
        map.put("shape", Rl.SHAPE);
        map.put("skos", SKOS.getURI());
        map.put("source", "https://rushlight.example/source/");
        map.put("xsd", "http://www.w3.org/2001/XMLSchema#");
        return PrefixMapping.Factory.create().setNsPrefixes(map).lock();
    }

    /** The node to write for an object; what hangs on a blank one is added on the way. */
    private Node name(Node object, String place, Graph all, Map<Node, String> says, int[] twins) {
        if (!object.isBlank()) {
            return object;
        }
        Node known = blanks.get(object);
        if (known != null) {
            return known;
        }
        String said = says(object, all, says);
        Node fresh = NodeFactory.createBlankNode("b" + digest(place + said));
        while (named.contains(fresh, Node.ANY, Node.ANY)) {
            fresh = NodeFactory.createBlankNode("b" + digest(place + said + ++twins[0]));
        }
        blanks.put(object, fresh);
        Node subject = fresh;
        List<Triple> own = all.find(object, Node.ANY, Node.ANY).toList();
        own.sort(Comparator.<Triple, String>comparing(t -> text(t.getPredicate()))
                .thenComparing(t -> says(t.getObject(), all, says)));
        for (Triple t : own) {
            String inner = place + said + text(t.getPredicate());
            named.add(subject, t.getPredicate(), name(t.getObject(), inner, all, says, twins));
        }
        return fresh;
    }

    /** What a node is or says, as a text that does not depend on the name of a blank node. */
    private static String says(Node node, Graph all, Map<Node, String> known) {
        if (!node.isBlank()) {
            return text(node);
        }
        String before = known.get(node);
        if (before != null) {
            return before;
        }
        known.put(node, "[ itself ]");
        List<String> parts = all.find(node, Node.ANY, Node.ANY)
                .mapWith(t -> text(t.getPredicate()) + " " + says(t.getObject(), all, known))
                .toList();
        String said = digest(parts.stream().sorted().toList().toString());
        known.put(node, said);
        return said;
    }

    private static String text(Node node) {
        return NodeFmtLib.strNT(node);
    }

    private static String digest(String text) {
        try {
            byte[] bytes = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(bytes, 0, 10);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
