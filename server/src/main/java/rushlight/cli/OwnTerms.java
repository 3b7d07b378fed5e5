package rushlight.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import rushlight.archive.Book;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Local;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/** What a data folder adds to the book, for people. */
final class OwnTerms {
    private final Ontology ontology;
    private final Taxonomy taxonomy;

    OwnTerms(Book book) {
        this.ontology = book.ontology();
        this.taxonomy = book.taxonomy();
    }

    /** What was added and what was set; nothing where the folder adds nothing. */
    String text() {
        if (ontology.overlay().isEmpty()) {
            return "";
        }
        Page page = new Page().blank().line("From your " + Book.OVERLAY + ":");
        List<String> terms = taxonomy.concepts().stream()
                .filter(Concept::local)
                .map(concept -> taxonomy.shown(concept.slug()))
                .toList();
        listed(page, "term", terms);
        listed(page, "pairing", ids(taxonomy.pairings(), Pairing::local, Pairing::id));
        listed(page, "fit rule", ids(taxonomy.fitRules(), FitRule::local, FitRule::id));
        listed(
                page,
                "statement of a lesson",
                "statements of lessons",
                new Facts(ontology.overlay())
                        .ofClass("Teaching").stream().map(OwnTerms::marked).toList());
        listed(page, "value set", "values set", settings());
        listed(page, "more name", names());
        return page.toString();
    }

    private static <T> List<String> ids(
            Collection<T> all, Predicate<T> local, java.util.function.Function<T, String> id) {
        return all.stream()
                .filter(local)
                .map(one -> Local.shown(id.apply(one), true))
                .toList();
    }

    private static String marked(Node node) {
        return Local.shown(Rl.slug(node), true);
    }

    private List<String> settings() {
        List<String> set = new ArrayList<>();
        Facts house = new Facts(ontology.shipped());
        ontology.overlay().stream().filter(this::replaces).forEach(t -> {
            String property = Rl.slug(t.getPredicate());
            String was = value(house.all(t.getSubject(), t.getPredicate()));
            set.add(taxonomy.shown(Rl.slug(t.getSubject())) + ": " + property + " " + value(List.of(t.getObject()))
                    + Local.mark(true) + (was.isEmpty() ? "" : ", house " + was));
        });
        return set.stream().sorted().toList();
    }

    private boolean replaces(Triple t) {
        Graph shipped = ontology.shipped();
        return shipped.contains(t.getSubject(), Node.ANY, Node.ANY)
                && new Facts(shipped).yes(t.getPredicate(), "settable");
    }

    private List<String> names() {
        return ontology.overlay().stream()
                .filter(t -> ontology.shipped().contains(t.getSubject(), Node.ANY, Node.ANY)
                        && t.getObject().isLiteral()
                        && Rl.isConcept(t.getSubject())
                        && !replaces(t))
                .map(t -> t.getObject().getLiteralLexicalForm() + Local.mark(true) + " for "
                        + taxonomy.label(Rl.slug(t.getSubject())))
                .sorted()
                .toList();
    }

    private static String value(List<Node> nodes) {
        return nodes.stream()
                .findFirst()
                .map(node -> node.isLiteral() ? node.getLiteralLexicalForm() : Rl.slug(node))
                .orElse("");
    }

    private static void listed(Page page, String one, List<String> items) {
        listed(page, one, one + "s", items);
    }

    private static void listed(Page page, String one, String many, List<String> items) {
        if (!items.isEmpty()) {
            page.wrapped(
                    "  ",
                    "    ",
                    items.size() + " " + (items.size() == 1 ? one : many) + ": " + String.join("; ", items) + ".");
        }
    }
}
