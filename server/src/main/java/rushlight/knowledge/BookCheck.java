package rushlight.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.shacl.ShaclValidator;
import org.apache.jena.shacl.Shapes;
import org.apache.jena.shacl.ValidationReport;
import org.apache.jena.shacl.validation.ReportEntry;
import org.apache.jena.shacl.validation.Severity;
import org.apache.jena.vocabulary.SKOS;

/** Holds the book, and a user's own terms, against the shapes that lie beside the terms. */
public final class BookCheck {
    /**
     * One thing to mend.
     *
     * @param about slug of the term
     * @param message what to do, in words for a coach
     * @param warning whether the book can be used all the same
     * @param local whether the term, or the statement, comes from the user's own file
     */
    public record Trouble(String about, String message, boolean warning, boolean local) {}

    private static final Set<Node> LABELS =
            Set.of(SKOS.prefLabel.asNode(), SKOS.altLabel.asNode(), SKOS.hiddenLabel.asNode());
    private static final Node YES = NodeFactory.createLiteralString("yes");

    private BookCheck() {}

    /** Everything to mend, the hard faults first. */
    public static List<Trouble> of(Ontology book) {
        List<Trouble> troubles = new ArrayList<>(clashes(book));
        ValidationReport report = ShaclValidator.get().validate(Shapes.parse(book.graph()), book.graph());
        for (ReportEntry entry : report.getEntries()) {
            Node focus = entry.focusNode();
            boolean warning = !Severity.Violation.equals(entry.severity());
            boolean local = book.overlay().contains(focus, Node.ANY, Node.ANY);
            troubles.add(new Trouble(named(focus), withValue(entry), warning, local));
        }
        troubles.sort(Comparator.comparing(Trouble::warning)
                .thenComparing(Trouble::about)
                .thenComparing(Trouble::message));
        return List.copyOf(troubles);
    }

    /** A user's own file may label shipped terms and set what is settable; it may not say other things about them. */
    private static List<Trouble> clashes(Ontology book) {
        Graph shipped = book.shipped();
        Set<Node> allowed = new HashSet<>(LABELS);
        shipped.find(Node.ANY, Rl.term("settable"), YES).forEachRemaining(t -> allowed.add(t.getSubject()));
        List<Trouble> troubles = new ArrayList<>();
        book.overlay().find().forEachRemaining(t -> {
            boolean about = t.getSubject().isURI() && shipped.contains(t.getSubject(), Node.ANY, Node.ANY);
            if (about && !allowed.contains(t.getPredicate()) && !shipped.contains(t)) {
                troubles.add(new Trouble(
                        named(t.getSubject()),
                        "Your file says " + named(t.getPredicate()) + " of a shipped term. Add labels to it or set its "
                                + "line, minimum or severity; for anything else make a term of your own.",
                        false,
                        true));
            }
        });
        return troubles;
    }

    private static String withValue(ReportEntry entry) {
        Node value = entry.value();
        return value == null || value.isBlank() ? entry.message() : entry.message() + " (found: " + named(value) + ")";
    }

    private static String named(Node node) {
        if (node.isURI()) {
            return Rl.slug(node);
        }
        return node.isLiteral() ? "\"" + node.getLiteralLexicalForm() + "\"" : "a nameless part";
    }
}
