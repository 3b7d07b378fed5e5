package rushlight.situation;

import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;

/** The words of SHACL that situations use. */
final class Sh {
    static final String NS = "http://www.w3.org/ns/shacl#";
    static final Node NODE_SHAPE = of("NodeShape");
    static final Node PROPERTY = of("property");
    static final Node PATH = of("path");
    static final Node HAS_VALUE = of("hasValue");
    static final Node IN = of("in");
    static final Node QUALIFIED_VALUE_SHAPE = of("qualifiedValueShape");
    static final Node QUALIFIED_MIN_COUNT = of("qualifiedMinCount");
    static final Node MIN_COUNT = of("minCount");
    static final Node MIN_INCLUSIVE = of("minInclusive");
    static final Node MAX_INCLUSIVE = of("maxInclusive");
    static final Node AND = of("and");
    static final Node OR = of("or");
    static final Node NOT = of("not");
    static final Node NAME = of("name");
    static final Node DESCRIPTION = of("description");

    private Sh() {}

    private static Node of(String name) {
        return NodeFactory.createURI(NS + name);
    }
}
