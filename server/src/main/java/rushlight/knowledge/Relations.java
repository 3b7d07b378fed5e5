package rushlight.knowledge;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.RDFS;
import org.apache.jena.vocabulary.SKOS;

/** How one concept hangs together with the others, read from the statements of the book in both directions. */
public final class Relations {
    private final Facts facts;

    /** Reads from a book. */
    public Relations(Ontology ontology) {
        this.facts = new Facts(ontology.graph());
    }

    /** Where a property of the schema leads from a concept, in order of the slugs. */
    public List<String> from(String slug, String property) {
        return facts.slugs(Rl.concept(slug), property);
    }

    /** What leads to a concept by a property of the schema, in order of the slugs. */
    public List<String> to(String slug, String property) {
        return facts.slugsTo(property, Rl.concept(slug));
    }

    /** The choices a concept leaves: of each list, one will do. In order of the first of each. */
    public List<List<String>> choices(String slug, String property) {
        return facts.all(Rl.concept(slug), Rl.term(property)).stream()
                .map(facts::list)
                .map(list -> list.stream().map(Rl::slug).toList())
                .filter(list -> !list.isEmpty())
                .sorted((a, b) -> a.get(0).compareTo(b.get(0)))
                .toList();
    }

    /** The concepts of a list that a property holds, in the order of the list. */
    public List<String> list(String slug, String property) {
        return facts.list(Rl.concept(slug), property).stream().map(Rl::slug).toList();
    }

    /** The concepts whose list, held by a property, names this one: the list read backwards. */
    public List<String> listing(String slug, String property) {
        Node wanted = Rl.concept(slug);
        return facts.withProperty(Rl.term(property)).stream()
                .filter(Rl::isConcept)
                .filter(node -> facts.list(node, property).contains(wanted))
                .map(Rl::slug)
                .sorted()
                .toList();
    }

    /** Concepts that mean nearly the same, or are told together. */
    public Set<String> near(String slug) {
        return List.of(SKOS.closeMatch, SKOS.related).stream()
                .flatMap(property -> facts.all(Rl.concept(slug), property.asNode()).stream())
                .filter(Rl::isConcept)
                .map(Rl::slug)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Notes on what a concept's names mean. */
    public List<String> notes(String slug) {
        return facts.texts(Rl.concept(slug), SKOS.scopeNote.asNode());
    }

    /** Where a concept is described. */
    public List<Source> sources(String slug) {
        return Source.of(Rl.concept(slug), facts, facts);
    }

    /** How well a concept is borne out: {@code strong}, {@code fair} or {@code common-practice}. */
    public String support(String slug) {
        return facts.text(Rl.concept(slug), "support").orElse(Rl.COMMON_PRACTICE);
    }

    /** A text of a concept. */
    public String text(String slug, String property) {
        return facts.text(Rl.concept(slug), property).orElse("");
    }

    /** All texts of a concept for a property of the schema, sorted. */
    public List<String> texts(String slug, String property) {
        return facts.texts(Rl.concept(slug), Rl.term(property));
    }

    /** What a class of the schema is called, such as {@code rush move}. */
    public String kind(String className) {
        Node node = Rl.term(className);
        return facts.texts(node, RDFS.label.asNode()).stream().findFirst().orElse(className);
    }
}
