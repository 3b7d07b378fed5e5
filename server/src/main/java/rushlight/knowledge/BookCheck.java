package rushlight.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.graph.compose.Union;
import org.apache.jena.shacl.ShaclValidator;
import org.apache.jena.shacl.Shapes;
import org.apache.jena.shacl.engine.ValidationContext;
import org.apache.jena.shacl.parser.Shape;
import org.apache.jena.shacl.validation.ReportEntry;
import org.apache.jena.shacl.validation.Severity;
import org.apache.jena.shacl.validation.VLib;
import org.apache.jena.sparql.path.P_Link;
import org.jspecify.annotations.Nullable;

/** Holds the book, its lessons and a user's own terms against the shipped shapes that lie beside the terms. */
public final class BookCheck {
    /**
     * One thing to mend.
     *
     * @param about slug of the term
     * @param message what to do, in words for a coach
     * @param warning whether the book can be used all the same
     * @param local whether the term, or the statement, comes from the user's own file
     * @param line where in the user's own file
     */
    public record Trouble(String about, String message, boolean warning, boolean local, OptionalLong line) {
        /** The order in which people read them: hard faults first, then from the top of the file to its end. */
        public static Comparator<Trouble> inOrder() {
            return Comparator.comparing(Trouble::warning)
                    .thenComparing(trouble -> trouble.line().orElse(Long.MAX_VALUE))
                    .thenComparing(Trouble::about)
                    .thenComparing(Trouble::message);
        }
    }

    private final Ontology book;

    private BookCheck(Ontology book) {
        this.book = book;
    }

    /** Everything the shapes object to. */
    public static List<Trouble> of(Ontology book) {
        return new BookCheck(book).troubles();
    }

    private List<Trouble> troubles() {
        Graph all = new Union(book.graph(), book.lessons());
        List<Trouble> troubles = new ArrayList<>();
        for (ReportEntry entry : entries(all)) {
            Node focus = entry.focusNode();
            if (book.overlay().isEmpty() || (isThere(focus, all) && isThere(entry.value(), all))) {
                boolean warning = !Severity.Violation.equals(entry.severity());
                boolean local = book.overlay().contains(focus, Node.ANY, Node.ANY);
                troubles.add(new Trouble(named(focus), withValue(entry), warning, local, line(entry)));
            }
        }
        return troubles.stream()
                .filter(trouble -> trouble.local() || !isEcho(trouble, troubles))
                .distinct()
                .sorted(Trouble.inOrder())
                .toList();
    }

    /**
     * What the shapes say. The shipped files are sound by their own tests, so where a user's own file is added only the nodes
     * that it speaks of are looked at: what it says of a term, and what it says a term of.
     */
    private List<ReportEntry> entries(Graph all) {
        Shapes shapes = Shapes.parse(book.shipped());
        if (book.overlay().isEmpty()) {
            return List.copyOf(ShaclValidator.get().validate(shapes, all).getEntries());
        }
        Set<Node> spokenOf = new HashSet<>();
        book.overlay().find().forEachRemaining(said -> {
            spokenOf.add(said.getSubject());
            spokenOf.add(said.getObject());
        });
        ValidationContext context = ValidationContext.create(shapes, all);
        for (Shape shape : shapes.getTargetShapes()) {
            VLib.focusNodes(all, shape).stream()
                    .filter(spokenOf::contains)
                    .distinct()
                    .forEach(node -> VLib.validateShape(context, all, shape, node));
        }
        return List.copyOf(context.generateReport().getEntries());
    }

    /** Whether a node is no term at all, or a term that is defined: a name that leads nowhere is told by its own check. */
    private static boolean isThere(@Nullable Node node, Graph all) {
        return node == null || !Rl.isConcept(node) || all.contains(node, Node.ANY, Node.ANY);
    }

    /** Two statements clash: what the shapes say of the shipped one is the fault of the user's own. */
    private static boolean isEcho(Trouble trouble, List<Trouble> all) {
        return all.stream().anyMatch(other -> other.local() && other.warning() == trouble.warning());
    }

    private OptionalLong line(ReportEntry entry) {
        Node focus = entry.focusNode();
        if (entry.resultPath() instanceof P_Link link) {
            List<Triple> said =
                    book.overlay().find(focus, link.getNode(), Node.ANY).toList();
            OptionalLong line =
                    said.stream().flatMapToLong(t -> book.line(t).stream()).min();
            if (line.isPresent()) {
                return line;
            }
        }
        return book.line(focus);
    }

    private static String withValue(ReportEntry entry) {
        Node value = entry.value();
        boolean telling = value != null && !value.isBlank() && !value.equals(entry.focusNode());
        return telling ? entry.message() + " (found: " + named(value) + ")" : entry.message();
    }

    private static String named(Node node) {
        if (node.isURI()) {
            return Rl.slug(node);
        }
        return node.isLiteral() ? "\"" + node.getLiteralLexicalForm() + "\"" : "a nameless part";
    }
}
