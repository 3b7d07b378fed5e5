package rushlight.report.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.jena.atlas.io.IndentedLineBuffer;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.riot.out.NodeFmtLib;
import org.apache.jena.riot.out.NodeFormatter;
import org.apache.jena.riot.out.NodeFormatterTTL;
import org.apache.jena.riot.system.PrefixMap;
import org.apache.jena.riot.system.PrefixMapFactory;
import org.apache.jena.vocabulary.RDF;

/** A graph as Turtle for people: subjects in order, the kind first, blank nodes where they hang, lists as lists. */
final class TurtleText {
    private static final Node TYPE = RDF.type.asNode();
    private static final Node FIRST = RDF.first.asNode();
    private static final Node REST = RDF.rest.asNode();
    private static final Node NIL = RDF.nil.asNode();

    private final Graph graph;
    private final NodeFormatter formatter;
    private final StringBuilder out = new StringBuilder();

    private TurtleText(Graph graph) {
        this.graph = graph;
        PrefixMap prefixes = PrefixMapFactory.create(graph.getPrefixMapping());
        this.formatter = new NodeFormatterTTL(null, prefixes);
    }

    static String of(Graph graph, String firstLine) {
        return new TurtleText(graph).write(firstLine);
    }

    private String write(String firstLine) {
        out.append("# ").append(firstLine).append('\n');
        new TreeMap<>(graph.getPrefixMapping().getNsPrefixMap())
                .forEach((prefix, iri) -> out.append("@prefix ")
                        .append(prefix)
                        .append(": <")
                        .append(iri)
                        .append("> .\n"));
        Set<Node> subjects = new TreeSet<>(Comparator.comparing(Node::getURI));
        graph.find().mapWith(Triple::getSubject).filterKeep(Node::isURI).forEachRemaining(subjects::add);
        for (Node subject : subjects) {
            out.append('\n').append(word(subject)).append(' ');
            statements(subject, "  ");
            out.append(" .\n");
        }
        return out.toString();
    }

    private void statements(Node subject, String indent) {
        Map<String, List<Triple>> byPredicate = new TreeMap<>();
        graph.find(subject, Node.ANY, Node.ANY)
                .forEachRemaining(t -> byPredicate
                        .computeIfAbsent(
                                t.getPredicate().equals(TYPE)
                                        ? ""
                                        : t.getPredicate().getURI(),
                                p -> new ArrayList<>())
                        .add(t));
        boolean first = true;
        for (List<Triple> triples : byPredicate.values()) {
            if (!first) {
                out.append(" ;\n").append(indent);
            }
            first = false;
            Node predicate = triples.get(0).getPredicate();
            out.append(predicate.equals(TYPE) ? "a" : word(predicate));
            String between = " ";
            for (Node object : sorted(triples)) {
                out.append(between);
                object(object, indent);
                between = " , ";
            }
        }
    }

    private static List<Node> sorted(List<Triple> triples) {
        return triples.stream()
                .map(Triple::getObject)
                .sorted(Comparator.comparing(NodeFmtLib::strNT))
                .toList();
    }

    private void object(Node node, String indent) {
        if (!node.isBlank()) {
            out.append(word(node));
            return;
        }
        List<Node> members = new ArrayList<>();
        if (isList(node, members)) {
            out.append('(');
            for (Node member : members) {
                out.append(' ');
                object(member, indent + "  ");
            }
            out.append(" )");
            return;
        }
        out.append("[ ");
        statements(node, indent + "  ");
        out.append(" ]");
    }

    /** Whether a node is nothing but a list, and then its members. */
    private boolean isList(Node head, List<Node> members) {
        Node at = head;
        while (!at.equals(NIL)) {
            List<Triple> own = graph.find(at, Node.ANY, Node.ANY).toList();
            List<Triple> first =
                    own.stream().filter(t -> t.getPredicate().equals(FIRST)).toList();
            List<Triple> rest =
                    own.stream().filter(t -> t.getPredicate().equals(REST)).toList();
            if (own.size() != 2 || first.size() != 1 || rest.size() != 1) {
                return false;
            }
            members.add(first.get(0).getObject());
            at = rest.get(0).getObject();
        }
        return true;
    }

    private String word(Node node) {
        IndentedLineBuffer buffer = new IndentedLineBuffer();
        formatter.format(buffer, node);
        return buffer.toString();
    }
}
