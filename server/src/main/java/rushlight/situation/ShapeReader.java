package rushlight.situation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import rushlight.knowledge.Facts;

/** Reads one node shape of the closed profile, and refuses every other with the reason. */
final class ShapeReader {
    private static final Set<Node> SAYS_NOTHING = Set.of(Sh.NAME, Sh.DESCRIPTION);

    private final Graph graph;
    private final Facts facts;
    private final PropertyReader properties;
    private final String name;
    private final Set<Node> within = new LinkedHashSet<>();

    ShapeReader(Graph graph, Facets facets, String name) {
        this.graph = graph;
        this.facts = new Facts(graph);
        this.name = name;
        this.properties = new PropertyReader(graph, facets, name);
    }

    Situation read(Node shape) {
        if (!within.add(shape)) {
            throw refused("it refers to itself, so it has no end.");
        }
        if (graph.contains(shape, Sh.PATH, Node.ANY)) {
            throw refused(
                    "a property stands bare inside sh:and, sh:or or sh:not. Write [ sh:property [ sh:path ... ] ].");
        }
        List<Situation> parts = new ArrayList<>();
        for (Node predicate : shaclOf(shape)) {
            for (Node object : facts.all(shape, predicate)) {
                parts.add(part(predicate, object));
            }
        }
        within.remove(shape);
        if (parts.isEmpty()) {
            throw refused("it asks for nothing, so every rep would fit. Add a sh:property.");
        }
        return Situation.all(parts);
    }

    private Situation part(Node predicate, Node object) {
        if (predicate.equals(Sh.PROPERTY)) {
            return properties.read(object);
        }
        if (predicate.equals(Sh.NOT)) {
            return Situation.not(read(object));
        }
        if (predicate.equals(Sh.AND)) {
            return Situation.all(members(object, "sh:and"));
        }
        if (predicate.equals(Sh.OR)) {
            return Situation.any(members(object, "sh:or"));
        }
        throw refused(PropertyReader.show(predicate)
                + " is not used in situations: only sh:property, sh:and, sh:or, sh:not.");
    }

    private List<Situation> members(Node head, String word) {
        List<Situation> members = facts.list(head).stream().map(this::read).toList();
        if (members.isEmpty()) {
            throw refused(word + " needs a list of shapes in round brackets.");
        }
        return members;
    }

    private Set<Node> shaclOf(Node shape) {
        Set<Node> predicates = new TreeSet<>((a, b) -> a.getURI().compareTo(b.getURI()));
        graph.find(shape, Node.ANY, Node.ANY).forEachRemaining(t -> {
            Node predicate = t.getPredicate();
            if (predicate.getURI().startsWith(Sh.NS) && !SAYS_NOTHING.contains(predicate)) {
                predicates.add(predicate);
            }
        });
        return predicates;
    }

    private RefusedShapeException refused(String reason) {
        return new RefusedShapeException(name + ": " + reason);
    }
}
