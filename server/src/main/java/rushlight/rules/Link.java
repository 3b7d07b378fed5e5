package rushlight.rules;

import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;

/** A fact without its subject: what the book says of a concept, to be said of each step that is one. */
record Link(Node property, Node object) {
    Triple of(Node subject) {
        return Triple.create(subject, property, object);
    }
}
