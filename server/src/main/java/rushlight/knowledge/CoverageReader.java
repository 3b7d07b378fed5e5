package rushlight.knowledge;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.vocabulary.RDFS;
import org.apache.jena.vocabulary.SKOS;

/** Counts what the terms of a book have. Which parts count for which kind stands in {@code coverage.ttl}. */
final class CoverageReader {
    private static final Pattern TERM = Pattern.compile("\\bkb:([\\w-]+)");
    private static final Node ABOUT = Rl.term("about");
    private static final Node PART = Rl.term("part");

    private final Ontology ontology;
    private final Graph book;
    private final Graph lessons;
    private final Facts facts;

    CoverageReader(Ontology ontology) {
        this.ontology = ontology;
        this.book = ontology.graph();
        this.lessons = ontology.lessons();
        this.facts = new Facts(book);
    }

    Coverage read() {
        return new Coverage(
                inOrder(facts.ofClass("KindCoverage")).stream().map(this::kind).toList(), orphans());
    }

    private Coverage.Kind kind(Node rule) {
        String name = facts.slug(rule, "ofClass")
                .orElseThrow(() -> new BrokenBookException(Rl.slug(rule) + " does not say its rl:ofClass."));
        List<Node> terms = facts.ofClass(name).stream().filter(Rl::isConcept).toList();
        List<Node> must = facts.all(rule, Rl.term("mustHave"));
        List<Node> counted = new ArrayList<>(must);
        counted.addAll(facts.all(rule, Rl.term("mayHave")));
        String label = facts.texts(Rl.term(name), RDFS.label.asNode()).stream()
                .findFirst()
                .orElse(name);
        int yours = (int) terms.stream().filter(ontology::isLocal).count();
        List<Coverage.Part> parts = inOrder(counted).stream()
                .map(part -> part(part, terms, must.contains(part)))
                .toList();
        return new Coverage.Kind(name, label, terms.size(), yours, parts);
    }

    private Coverage.Part part(Node part, List<Node> terms, boolean must) {
        Set<Node> having = having(part);
        List<String> missing = terms.stream()
                .filter(term -> !having.contains(term))
                .map(Rl::slug)
                .toList();
        return new Coverage.Part(
                facts.text(part, "heading").orElse(Rl.slug(part)), terms.size() - missing.size(), must, missing);
    }

    private Set<Node> having(Node part) {
        Set<Node> having = new HashSet<>();
        for (Node property : facts.all(part, Rl.term("byProperty"))) {
            having.addAll(facts.withProperty(property));
        }
        for (Node property : facts.all(part, Rl.term("pointedAtBy"))) {
            book.find(Node.ANY, property, Node.ANY).forEachRemaining(t -> having.add(t.getObject()));
        }
        for (Node told : facts.all(part, Rl.term("toldAs"))) {
            lessons.find(Node.ANY, PART, told)
                    .mapWith(Triple::getSubject)
                    .toList()
                    .forEach(statement ->
                            lessons.find(statement, ABOUT, Node.ANY).forEachRemaining(t -> having.add(t.getObject())));
        }
        return having;
    }

    private List<Node> inOrder(Collection<Node> nodes) {
        return nodes.stream()
                .sorted(Comparator.<Node>comparingInt(node ->
                                facts.text(node, "order").map(Integer::parseInt).orElse(Integer.MAX_VALUE))
                        .thenComparing(Rl::slug))
                .toList();
    }

    /** Terms without a link to another term and without a rule that names them; a lesson about a term is no such link. */
    private List<String> orphans() {
        Set<Node> linked = named();
        book.find(Node.ANY, Node.ANY, Node.ANY).forEachRemaining(t -> {
            Node from = t.getSubject();
            Node to = t.getObject();
            if (Rl.isConcept(to) && !from.equals(to) && !book.contains(from, ABOUT, to)) {
                linked.add(to);
                linked.add(from);
            } else if (Rl.isConcept(from) && to.isBlank() && namesAnother(from, to)) {
                linked.add(from);
            }
        });
        Set<String> alone = new TreeSet<>();
        facts.withProperty(SKOS.prefLabel.asNode()).stream()
                .filter(term -> Rl.isConcept(term) && !linked.contains(term))
                .forEach(term -> alone.add(Rl.slug(term)));
        return List.copyOf(alone);
    }

    /** The terms that the rules name. */
    private static Set<Node> named() {
        Set<Node> named = new HashSet<>();
        Ontology.files().stream()
                .filter(file -> file.endsWith(".rules"))
                .forEach(file -> TERM.matcher(Ontology.text(file))
                        .results()
                        .forEach(found -> named.add(Rl.concept(found.group(1)))));
        return named;
    }

    /** Whether a list, or a nameless shape, leads on to another term. */
    private boolean namesAnother(Node from, Node nameless) {
        Set<Node> seen = new HashSet<>();
        Deque<Node> open = new ArrayDeque<>(List.of(nameless));
        while (!open.isEmpty()) {
            Node at = open.pop();
            if (seen.add(at)) {
                List<Node> next = facts(at).toList();
                if (next.stream().anyMatch(node -> Rl.isConcept(node) && !node.equals(from))) {
                    return true;
                }
                next.stream().filter(Node::isBlank).forEach(open::add);
            }
        }
        return false;
    }

    private Stream<Node> facts(Node subject) {
        return book.find(subject, Node.ANY, Node.ANY).mapWith(Triple::getObject).toList().stream();
    }
}
