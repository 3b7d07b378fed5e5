package rushlight.situation;

import java.util.List;
import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.vocabulary.RDF;
import rushlight.knowledge.Rl;

/** Writes a situation as a node shape of the closed profile. */
final class ShapeWriter {
    private final Graph graph;
    private final Facets facets;

    ShapeWriter(Graph graph, Facets facets) {
        this.graph = graph;
        this.facets = facets;
    }

    void write(Situation situation, Node shape) {
        graph.add(shape, RDF.type.asNode(), Sh.NODE_SHAPE);
        constrain(shape, situation);
    }

    private void constrain(Node shape, Situation situation) {
        if (situation instanceof Situation.And and) {
            and.parts().forEach(part -> constrain(shape, part));
        } else if (situation instanceof Situation.Or or) {
            graph.add(shape, Sh.OR, list(or.parts().stream().map(this::inner).toList()));
        } else if (situation instanceof Situation.Not not) {
            graph.add(shape, Sh.NOT, inner(not.inner()));
        } else {
            Node property = NodeFactory.createBlankNode();
            graph.add(shape, Sh.PROPERTY, property);
            condition(property, situation);
        }
    }

    private Node inner(Situation situation) {
        Node shape = NodeFactory.createBlankNode();
        constrain(shape, situation);
        return shape;
    }

    private void condition(Node property, Situation situation) {
        if (situation instanceof Situation.Has has) {
            graph.add(property, Sh.PATH, Rl.term(has.facet()));
            graph.add(property, Sh.HAS_VALUE, value(has.facet(), has.value()));
        } else if (situation instanceof Situation.AnyOf any) {
            Node values = NodeFactory.createBlankNode();
            graph.add(property, Sh.PATH, Rl.term(any.facet()));
            graph.add(property, Sh.QUALIFIED_VALUE_SHAPE, values);
            graph.add(property, Sh.QUALIFIED_MIN_COUNT, integer(1));
            graph.add(
                    values,
                    Sh.IN,
                    list(any.values().stream().map(v -> value(any.facet(), v)).toList()));
        } else if (situation instanceof Situation.Between between) {
            graph.add(property, Sh.PATH, Rl.term(between.facet()));
            graph.add(property, Sh.MIN_COUNT, integer(1));
            between.least().ifPresent(n -> graph.add(property, Sh.MIN_INCLUSIVE, integer(n)));
            between.most().ifPresent(n -> graph.add(property, Sh.MAX_INCLUSIVE, integer(n)));
        }
    }

    private Node value(String facet, String value) {
        boolean concept = facets.named(facet)
                .map(f -> f.kind() == Facet.Kind.CONCEPT)
                .orElseThrow(() -> new IllegalArgumentException("There is no facet " + facet + "."));
        return concept ? Rl.concept(value) : NodeFactory.createLiteralString(value);
    }

    private static Node integer(int n) {
        return NodeFactory.createLiteralDT(Integer.toString(n), XSDDatatype.XSDinteger);
    }

    private Node list(List<Node> members) {
        Node rest = RDF.nil.asNode();
        for (int i = members.size() - 1; i >= 0; i--) {
            Node cell = NodeFactory.createBlankNode();
            graph.add(cell, RDF.first.asNode(), members.get(i));
            graph.add(cell, RDF.rest.asNode(), rest);
            rest = cell;
        }
        return rest;
    }
}
