package rushlight.archive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.graph.compose.Union;
import org.apache.jena.vocabulary.OWL2;
import org.apache.jena.vocabulary.RDF;
import org.apache.jena.vocabulary.RDFS;
import org.apache.jena.vocabulary.SKOS;
import rushlight.knowledge.BookCheck.Trouble;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.words.NearestLabels;

/** What a user's own file may say: more names and other lines for shipped terms, and terms that are new. */
final class OverlayStatements {
    private static final Node TYPE = RDF.type.asNode();
    private static final Node PREF = SKOS.prefLabel.asNode();
    private static final Set<Node> NAMES = Set.of(SKOS.altLabel.asNode(), SKOS.hiddenLabel.asNode());
    private static final Set<String> SPACES = Set.of(Rl.CONCEPT, Rl.SHAPE, "https://rushlight.example/source/");
    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-+[a-z0-9]+)*");
    private static final Node YES = NodeFactory.createLiteralString("yes");

    private final Ontology book;
    private final Graph own;
    private final Graph shipped;
    private final Graph all;
    private final Set<Node> settable;
    private final Set<Node> addable;
    private final Set<String> settled = new HashSet<>();
    private final List<Trouble> troubles = new ArrayList<>();

    private OverlayStatements(Ontology book) {
        this.book = book;
        this.own = book.overlay();
        this.shipped = new Union(book.shipped(), book.shippedLessons());
        this.all = new Union(shipped, own);
        this.settable = marked("settable");
        this.addable = marked("addable");
    }

    /** What may not be said, or names nothing. */
    static OverlayStatements of(Ontology book) {
        OverlayStatements statements = new OverlayStatements(book);
        statements.own.stream()
                .map(Triple::getSubject)
                .filter(Node::isURI)
                .distinct()
                .sorted(Comparator.comparing(Node::getURI))
                .forEach(statements::check);
        return statements;
    }

    List<Trouble> troubles() {
        return List.copyOf(troubles);
    }

    /** Terms about which enough is said here: what the shapes say of them would only be an echo. */
    boolean settles(Trouble trouble) {
        return settled.contains(trouble.about());
    }

    private void check(Node subject) {
        if (own.contains(subject, TYPE, OWL2.Ontology.asNode())) {
            return;
        }
        String space = subject.getURI()
                .substring(0, subject.getURI().length() - Rl.slug(subject).length());
        if (!SPACES.contains(space)) {
            settled.add(Rl.slug(subject));
            add(subject, book.line(subject), "This name is outside of the book. Write kb: and a name of your own.");
        } else if (shipped.contains(subject, Node.ANY, Node.ANY)) {
            shippedTerm(subject);
        } else if (!own.contains(subject, TYPE, Node.ANY)) {
            settled.add(Rl.slug(subject));
            add(
                    subject,
                    book.line(subject),
                    "The book has no term of this name. Nearest: " + nearest(Rl.slug(subject), space)
                            + ". A term of your own says first what it is: a skos:Concept and its kind.");
        } else {
            ownTerm(subject);
        }
        words(subject);
    }

    private void shippedTerm(Node term) {
        settled.add(Rl.slug(term));
        Optional<Triple> again = said(term)
                .filter(t -> t.getPredicate().equals(TYPE) && !shipped.contains(t))
                .findFirst();
        if (again.isPresent() || own.contains(term, SKOS.definition.asNode(), Node.ANY)) {
            add(
                    term,
                    book.line(term),
                    "The shipped book has something of this name already (" + label(term)
                            + "). Give yours another name; what was shipped stays as it is.");
            return;
        }
        said(term).filter(t -> !shipped.contains(t)).forEach(t -> {
            Node property = t.getPredicate();
            if (property.equals(PREF)) {
                add(
                        term,
                        book.line(t),
                        "It keeps its preferred label, " + label(term) + ". Add yours with skos:altLabel.");
            } else if (settable.contains(property)) {
                settableValue(term, t);
            } else if (!NAMES.contains(property)) {
                add(
                        term,
                        book.line(t),
                        "Your file says " + Rl.slug(property) + " of a shipped term. Add labels to it or set its "
                                + names(settable) + "; for anything else make a term of your own.");
            }
        });
    }

    private void settableValue(Node term, Triple said) {
        Node property = said.getPredicate();
        boolean known = classes(term)
                .anyMatch(kind -> shipped.find(Node.ANY, property, Node.ANY).toList().stream()
                        .anyMatch(t -> shipped.contains(t.getSubject(), TYPE, kind)));
        if (!known) {
            add(
                    term,
                    book.line(said),
                    "It has no " + Rl.slug(property) + " that could be set: nothing of its kind has one.");
        } else {
            settled.remove(Rl.slug(term));
        }
    }

    private void ownTerm(Node term) {
        if (!SLUG.matcher(Rl.slug(term)).matches()) {
            add(term, book.line(term), "Write the name in small letters, digits and hyphens.");
        }
        if (term.getURI().startsWith(Rl.SHAPE)) {
            said(term)
                    .filter(t -> Rl.slug(t.getPredicate()).startsWith("target"))
                    .forEach(t -> add(
                            term,
                            book.line(t),
                            "A shape of yours describes reps for a finding. It cannot lay down what terms have: take"
                                    + " sh:" + Rl.slug(t.getPredicate()) + " out."));
            return;
        }
        said(term)
                .filter(t -> t.getPredicate().equals(TYPE) && !addable.contains(t.getObject()))
                .filter(t -> !t.getObject().equals(SKOS.Concept.asNode()))
                .forEach(t -> add(
                        term,
                        book.line(t),
                        "A file of your own cannot add a " + Rl.slug(t.getObject()) + ". It can add: " + names(addable)
                                + "."));
    }

    private void words(Node subject) {
        said(subject).forEach(t -> {
            Node property = t.getPredicate();
            if (property.getURI().startsWith(Rl.SCHEMA) && !shipped.contains(property, TYPE, Node.ANY)) {
                String slug = Rl.slug(property);
                add(subject, book.line(t), "There is no rl:" + slug + ". Nearest: " + nearest(slug, Rl.SCHEMA) + ".");
            }
            Node object = t.getObject();
            if (Rl.isConcept(object) && !all.contains(object, Node.ANY, Node.ANY)) {
                add(
                        subject,
                        book.line(t),
                        "It names kb:" + Rl.slug(object) + ", which the book does not have. Nearest: "
                                + nearest(Rl.slug(object), Rl.CONCEPT) + ".");
            }
        });
    }

    private Stream<Triple> said(Node subject) {
        return own.find(subject, Node.ANY, Node.ANY).toList().stream()
                .sorted(Comparator.comparingLong((Triple t) -> book.line(t).orElse(0))
                        .thenComparing(t -> t.toString()));
    }

    private Stream<Node> classes(Node term) {
        return shipped.find(term, TYPE, Node.ANY).mapWith(Triple::getObject).toList().stream()
                .filter(kind -> !kind.equals(SKOS.Concept.asNode()));
    }

    private String nearest(String slug, String space) {
        Set<String> slugs = new TreeSet<>();
        shipped.find(Node.ANY, TYPE, Node.ANY).forEachRemaining(t -> {
            if (t.getSubject().isURI() && t.getSubject().getURI().startsWith(space)) {
                slugs.add(Rl.slug(t.getSubject()));
            }
        });
        return String.join(", ", NearestLabels.words(slugs).to(slug, 3));
    }

    private Set<Node> marked(String property) {
        return shipped.find(Node.ANY, Rl.term(property), YES)
                .mapWith(Triple::getSubject)
                .toSet();
    }

    private String names(Set<Node> words) {
        return words.stream().map(this::label).sorted().collect(Collectors.joining(", "));
    }

    private String label(Node node) {
        Facts facts = new Facts(shipped);
        return Stream.concat(facts.texts(node, PREF).stream(), facts.texts(node, RDFS.label.asNode()).stream())
                .findFirst()
                .orElse(Rl.slug(node));
    }

    private void add(Node about, OptionalLong line, String message) {
        troubles.add(new Trouble(Rl.slug(about), message, false, true, line));
    }
}
