package rushlight.archive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.vocabulary.SKOS;
import rushlight.knowledge.BookCheck.Trouble;
import rushlight.knowledge.Column;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;
import rushlight.words.Meaning;
import rushlight.words.Vocabulary;

/** Names of a user's own that mean something else already. */
final class LabelClashes {
    private static final Set<Node> LABELS =
            Set.of(SKOS.prefLabel.asNode(), SKOS.altLabel.asNode(), SKOS.hiddenLabel.asNode(), Rl.term("needsContext"));

    private final Ontology book;
    private final Taxonomy taxonomy;
    private final Map<String, Vocabulary> byPlace = new LinkedHashMap<>();
    private final Vocabulary everything;

    LabelClashes(Ontology book, Taxonomy taxonomy) {
        this.book = book;
        this.taxonomy = taxonomy;
        this.everything = Vocabulary.of(taxonomy);
        for (Column column : taxonomy.film().all()) {
            if (column.kind() == Column.Kind.CONCEPT) {
                byPlace.put(
                        "the column " + column.name(),
                        Vocabulary.of(taxonomy, column.classes(), column.narrowerThan()));
            }
        }
        taxonomy.film().stepFacets().stream()
                .collect(Collectors.groupingBy(
                        facet -> facet.by(),
                        Collectors.flatMapping(facet -> facet.classes().stream(), Collectors.toSet())))
                .forEach((by, classes) ->
                        byPlace.put("the exchange", Vocabulary.of(taxonomy, classes, Optional.empty())));
    }

    /** A name that means two things in one column is a fault; one that stands in different columns is worth knowing. */
    List<Trouble> troubles() {
        List<Trouble> troubles = new ArrayList<>();
        book.overlay().stream()
                .filter(t -> LABELS.contains(t.getPredicate())
                        && Rl.isConcept(t.getSubject())
                        && t.getObject().isLiteral()
                        && !book.shipped().contains(t))
                .forEach(t -> clash(t).ifPresent(troubles::add));
        return troubles;
    }

    private Optional<Trouble> clash(Triple said) {
        String slug = Rl.slug(said.getSubject());
        String label = said.getObject().getLiteralLexicalForm();
        Set<String> others = others(everything, label, slug);
        if (others.isEmpty()) {
            return Optional.empty();
        }
        for (Map.Entry<String, Vocabulary> place : byPlace.entrySet()) {
            Set<String> here = others(place.getValue(), label, slug);
            if (!here.isEmpty()) {
                return Optional.of(trouble(
                        said,
                        "\"" + label + "\" means " + named(here) + " already, and " + place.getKey()
                                + " could not tell them apart. Choose another name.",
                        false));
            }
        }
        return Optional.of(trouble(
                said,
                "\"" + label + "\" means " + named(others)
                        + " as well. No column takes both, but a question may ask which you mean.",
                true));
    }

    private Trouble trouble(Triple said, String message, boolean warning) {
        return new Trouble(Rl.slug(said.getSubject()), message, warning, true, book.line(said));
    }

    private static Set<String> others(Vocabulary vocabulary, String label, String slug) {
        if (!(vocabulary.meaning(label) instanceof Meaning.Several several)
                || !several.slugs().contains(slug)) {
            return Set.of();
        }
        Set<String> others = new TreeSet<>(several.slugs());
        others.remove(slug);
        return others;
    }

    private String named(Set<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(" and "));
    }
}
