package rushlight.situation;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Rl;

/** Reads one condition on one facet. */
final class PropertyReader {
    private static final Set<Node> QUALIFIED = Set.of(Sh.QUALIFIED_VALUE_SHAPE, Sh.QUALIFIED_MIN_COUNT);
    private static final Set<Node> RANGE = Set.of(Sh.MIN_COUNT, Sh.MIN_INCLUSIVE, Sh.MAX_INCLUSIVE);

    private final Graph graph;
    private final Facts facts;
    private final Facets facets;
    private final String name;

    PropertyReader(Graph graph, Facets facets, String name) {
        this.graph = graph;
        this.facts = new Facts(graph);
        this.facets = facets;
        this.name = name;
    }

    Situation read(Node property) {
        Facet facet = facet(property);
        Set<Node> says = says(property);
        if (says.equals(Set.of(Sh.HAS_VALUE))) {
            List<Node> values = facts.all(property, Sh.HAS_VALUE);
            if (values.size() != 1) {
                throw refused("sh:hasValue of " + show(facet) + " has " + values.size()
                        + " values. Write one sh:property for each where all must hold, or sh:in where one is enough.");
            }
            return Situation.has(facet.name(), value(facet, values.get(0)));
        }
        if (says.equals(QUALIFIED)) {
            return oneOf(facet, property);
        }
        if (says.contains(Sh.MIN_COUNT) && RANGE.containsAll(says) && says.size() > 1) {
            return range(facet, property);
        }
        throw refused(whyNot(facet, says));
    }

    private Facet facet(Node property) {
        List<Node> paths = facts.all(property, Sh.PATH);
        if (paths.size() != 1 || !paths.get(0).isURI()) {
            throw refused("a sh:property needs exactly one sh:path, and that the plain name of a facet.");
        }
        Node path = paths.get(0);
        String local = Rl.slug(path);
        if (!path.equals(Rl.term(local)) || facets.named(local).isEmpty()) {
            throw refused("there is no facet " + show(path) + " that can be counted. There are "
                    + facets.all().stream().map(Facet::name).collect(Collectors.joining(", ")) + ".");
        }
        return facets.named(local).get();
    }

    private Set<Node> says(Node property) {
        Set<Node> says = new HashSet<>();
        graph.find(property, Node.ANY, Node.ANY).forEachRemaining(t -> {
            if (t.getPredicate().getURI().startsWith(Sh.NS)) {
                says.add(t.getPredicate());
            }
        });
        says.removeAll(Set.of(Sh.PATH, Sh.NAME, Sh.DESCRIPTION));
        return says;
    }

    private Situation oneOf(Facet facet, Node property) {
        requireOne(facet, property, Sh.QUALIFIED_MIN_COUNT);
        List<Node> inner = facts.all(property, Sh.QUALIFIED_VALUE_SHAPE);
        List<Node> lists = inner.size() == 1 ? facts.all(inner.get(0), Sh.IN) : List.of();
        if (lists.size() != 1 || !says(inner.get(0)).equals(Set.of(Sh.IN))) {
            throw refused("sh:qualifiedValueShape of " + show(facet) + " must be just [ sh:in ( ... ) ].");
        }
        Set<String> values = new LinkedHashSet<>();
        facts.list(lists.get(0)).forEach(node -> values.add(value(facet, node)));
        if (values.isEmpty()) {
            throw refused("sh:in of " + show(facet) + " needs its values in round brackets.");
        }
        return Situation.anyOf(facet.name(), values);
    }

    private Situation range(Facet facet, Node property) {
        if (facet.kind() != Facet.Kind.NUMBER) {
            throw refused(show(facet) + " has no numbers, so it cannot be in a range.");
        }
        requireOne(facet, property, Sh.MIN_COUNT);
        try {
            return new Situation.Between(
                    facet.name(), bound(property, Sh.MIN_INCLUSIVE), bound(property, Sh.MAX_INCLUSIVE));
        } catch (IllegalArgumentException e) {
            throw refused(String.valueOf(e.getMessage()));
        }
    }

    private OptionalInt bound(Node property, Node which) {
        List<Node> bounds = facts.all(property, which);
        if (bounds.isEmpty()) {
            return OptionalInt.empty();
        }
        if (bounds.size() > 1 || !isInteger(bounds.get(0))) {
            throw refused(show(which) + " must be one whole number.");
        }
        return OptionalInt.of(Integer.parseInt(bounds.get(0).getLiteralLexicalForm()));
    }

    private void requireOne(Facet facet, Node property, Node which) {
        List<Node> counts = facts.all(property, which);
        if (counts.size() != 1
                || !isInteger(counts.get(0))
                || Integer.parseInt(counts.get(0).getLiteralLexicalForm()) != 1) {
            throw refused(show(which) + " of " + show(facet) + " must be 1: situations ask whether, not how often.");
        }
    }

    private static boolean isInteger(Node node) {
        return node.isLiteral()
                && XSDDatatype.XSDinteger.getURI().equals(node.getLiteralDatatypeURI())
                && node.getLiteralLexicalForm().matches("[+-]?[0-9]{1,9}");
    }

    private String value(Facet facet, Node node) {
        return switch (facet.kind()) {
            case NUMBER ->
                throw refused(show(facet) + " is a number: ask for it with sh:minCount 1 and sh:minInclusive or"
                        + " sh:maxInclusive.");
            case CONCEPT -> concept(facet, node);
            case WORD -> word(facet, node);
        };
    }

    private String concept(Facet facet, Node node) {
        if (!Rl.isConcept(node)) {
            throw refused(show(facet) + " holds concepts, but " + show(node) + " is none. Write kb: and the slug.");
        }
        if (!facet.values().contains(Rl.slug(node))) {
            throw refused(show(node) + " is no value of " + show(facet) + ": no concept there is it or narrower ("
                    + facet.meant() + ").");
        }
        return Rl.slug(node);
    }

    private String word(Facet facet, Node node) {
        if (!node.isLiteral() || !XSDDatatype.XSDstring.getURI().equals(node.getLiteralDatatypeURI())) {
            throw refused(show(facet) + " holds plain words, but " + show(node) + " is none. It knows " + facet.meant()
                    + ".");
        }
        String word = node.getLiteralLexicalForm();
        if (!facet.values().contains(word)) {
            throw refused(show(node) + " is no value of " + show(facet) + ". It knows " + facet.meant() + ".");
        }
        return word;
    }

    private static String whyNot(Facet facet, Set<Node> says) {
        if (says.contains(Sh.IN)) {
            return "plain sh:in also passes a rep that has no " + show(facet)
                    + ". Write sh:qualifiedValueShape [ sh:in ( ... ) ] ; sh:qualifiedMinCount 1.";
        }
        if (!says.contains(Sh.MIN_COUNT) && (says.contains(Sh.MIN_INCLUSIVE) || says.contains(Sh.MAX_INCLUSIVE))) {
            return "a range also passes a rep that has no " + show(facet) + ". Add sh:minCount 1.";
        }
        String found = says.stream().map(PropertyReader::show).sorted().collect(Collectors.joining(", "));
        return show(facet) + " with " + (found.isEmpty() ? "nothing else" : found)
                + " is not a condition situations know. Write one of sh:hasValue, sh:qualifiedValueShape [ sh:in ( ... ) ]"
                + " with sh:qualifiedMinCount 1, or sh:minCount 1 with sh:minInclusive or sh:maxInclusive.";
    }

    private static String show(Facet facet) {
        return "rl:" + facet.name();
    }

    static String show(Node node) {
        if (node.isLiteral()) {
            return '"' + node.getLiteralLexicalForm() + '"';
        }
        if (!node.isURI()) {
            return "a blank node";
        }
        return node.getURI().startsWith(Sh.NS)
                ? "sh:" + node.getURI().substring(Sh.NS.length())
                : node.getURI()
                        .replace(Rl.SCHEMA, "rl:")
                        .replace(Rl.CONCEPT, "kb:")
                        .replace(Rl.SHAPE, "shape:");
    }

    private RefusedShapeException refused(String reason) {
        return new RefusedShapeException(name + ": " + reason);
    }
}
