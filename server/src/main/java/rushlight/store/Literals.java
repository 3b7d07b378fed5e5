package rushlight.store;

import java.time.Instant;
import java.util.Optional;
import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;

/** Texts, numbers and times as the store writes them, and texts read back. */
final class Literals {
    private Literals() {}

    static Node of(String text) {
        return NodeFactory.createLiteralString(text);
    }

    static Node of(long number) {
        return NodeFactory.createLiteralDT(Long.toString(number), XSDDatatype.XSDinteger);
    }

    static Node of(Instant when) {
        return NodeFactory.createLiteralDT(when.toString(), XSDDatatype.XSDdateTime);
    }

    /** What a literal of a property says; empty where there is none. */
    static Optional<String> text(Graph graph, Node subject, Node property) {
        return graph.find(subject, property, Node.ANY)
                .mapWith(Triple::getObject)
                .filterKeep(Node::isLiteral)
                .mapWith(Node::getLiteralLexicalForm)
                .nextOptional();
    }
}
