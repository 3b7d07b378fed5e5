package rushlight.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.vocabulary.RDF;

/** Reads single statements of the book's graph. Jena's nulls and iterators stay in here. */
public final class Facts {
    private static final Node TYPE = RDF.type.asNode();
    private static final Node FIRST = RDF.first.asNode();
    private static final Node REST = RDF.rest.asNode();
    private static final Node NIL = RDF.nil.asNode();

    private final Graph graph;

    /** Reads from {@code graph}. */
    public Facts(Graph graph) {
        this.graph = graph;
    }

    /** The subjects that have this class, in order of their address. */
    public List<Node> ofClass(String name) {
        return graph
                .find(Node.ANY, TYPE, Rl.term(name))
                .mapWith(Triple::getSubject)
                .filterKeep(Node::isURI)
                .toList()
                .stream()
                .distinct()
                .sorted((a, b) -> a.getURI().compareTo(b.getURI()))
                .toList();
    }

    /** The subjects that have this property. */
    public Set<Node> withProperty(Node property) {
        Set<Node> subjects = new LinkedHashSet<>();
        graph.find(Node.ANY, property, Node.ANY).forEachRemaining(t -> subjects.add(t.getSubject()));
        return subjects;
    }

    /** The concepts that lead to an object by a property of the schema: the property read backwards. Sorted slugs. */
    public List<String> slugsTo(String property, Node object) {
        return graph
                .find(Node.ANY, Rl.term(property), object)
                .mapWith(Triple::getSubject)
                .filterKeep(Rl::isConcept)
                .mapWith(Rl::slug)
                .toList()
                .stream()
                .sorted()
                .toList();
    }

    /** The classes of the schema that a subject has, by local name. */
    public Set<String> classes(Node subject) {
        Set<String> names = new TreeSet<>();
        graph.find(subject, TYPE, Node.ANY).forEachRemaining(t -> {
            if (t.getObject().isURI() && t.getObject().getURI().startsWith(Rl.SCHEMA)) {
                names.add(Rl.slug(t.getObject()));
            }
        });
        return names;
    }

    /** All objects of a property. */
    public List<Node> all(Node subject, Node property) {
        return graph.find(subject, property, Node.ANY)
                .mapWith(Triple::getObject)
                .toList();
    }

    /** All slugs of a property of the schema, sorted. */
    public List<String> slugs(Node subject, String property) {
        return all(subject, Rl.term(property)).stream()
                .filter(Node::isURI)
                .map(Rl::slug)
                .sorted()
                .toList();
    }

    /** All texts of a property, sorted. */
    public List<String> texts(Node subject, Node property) {
        return all(subject, property).stream()
                .filter(Node::isLiteral)
                .map(Node::getLiteralLexicalForm)
                .sorted()
                .toList();
    }

    /** The text of a property of the schema. */
    public Optional<String> text(Node subject, String property) {
        return texts(subject, Rl.term(property)).stream().findFirst();
    }

    /** The slug of a property of the schema. */
    public Optional<String> slug(Node subject, String property) {
        return slugs(subject, property).stream().findFirst();
    }

    /** Whether the property says yes. */
    public boolean yes(Node subject, String property) {
        return text(subject, property)
                .filter(t -> t.equals("yes") || t.equals("true"))
                .isPresent();
    }

    /**
     * The text of a property that the book must say.
     *
     * @throws BrokenBookException where it does not
     */
    String needed(Node subject, String property) {
        return text(subject, property)
                .orElseThrow(() ->
                        new BrokenBookException("The book's " + Rl.slug(subject) + " lacks rl:" + property + "."));
    }

    /**
     * The whole number of a property that the book must say.
     *
     * @throws BrokenBookException where it does not
     */
    int number(Node subject, String property) {
        return Integer.parseInt(needed(subject, property));
    }

    /** What a property leads to among records already read, in order of the slugs. */
    <T> List<T> some(Node subject, String property, Map<Node, T> known) {
        return all(subject, Rl.term(property)).stream()
                .filter(known::containsKey)
                .sorted((a, b) -> a.getURI().compareTo(b.getURI()))
                .flatMap(node -> Optional.ofNullable(known.get(node)).stream())
                .toList();
    }

    /**
     * The one record that a property leads to.
     *
     * @throws BrokenBookException where it leads to none
     */
    <T> T one(Node subject, String property, Map<Node, T> known) {
        return some(subject, property, known).stream()
                .findFirst()
                .orElseThrow(() ->
                        new BrokenBookException("The book's " + Rl.slug(subject) + " lacks rl:" + property + "."));
    }

    /** The members of an RDF list; empty where {@code head} is no list. */
    public List<Node> list(Node head) {
        List<Node> members = new ArrayList<>();
        Node at = head;
        while (!at.equals(NIL)) {
            List<Node> first = all(at, FIRST);
            List<Node> rest = all(at, REST);
            if (first.isEmpty() || rest.isEmpty()) {
                return members;
            }
            members.add(first.get(0));
            at = rest.get(0);
        }
        return members;
    }

    /** The members of the list that a property of the schema holds. */
    public List<Node> list(Node subject, String property) {
        return all(subject, Rl.term(property)).stream()
                .findFirst()
                .map(this::list)
                .orElse(List.of());
    }
}
