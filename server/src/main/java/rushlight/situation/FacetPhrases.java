package rushlight.situation;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Ontology;

/** The book's sentences for what a rep is like in a facet: "he met the {}", and for one value "he won the rep". */
final class FacetPhrases {
    private static final String HOLE = "{}";

    private record Phrase(String saying, String denying) {
        String said(boolean denied, String value) {
            return (denied ? denying : saying).replace(HOLE, value);
        }
    }

    private final Map<String, Phrase> phrases = new HashMap<>();

    FacetPhrases(Ontology ontology) {
        Facts facts = new Facts(ontology.graph());
        for (Node node : facts.ofClass("FacetPhrase")) {
            String facet = facts.slug(node, "facet").orElseThrow();
            phrases.put(
                    key(facet, facts.text(node, "value").orElse("")),
                    new Phrase(
                            facts.text(node, "saying").orElseThrow(),
                            facts.text(node, "denying").orElseThrow()));
        }
    }

    /** That the rep has one of the values in the facet, or none of them; {@code shown} gives the words for a value. */
    String said(String facet, Collection<String> values, boolean denied, Function<String, String> shown) {
        boolean each = values.stream().anyMatch(value -> phrases.containsKey(key(facet, value)));
        if (each) {
            return values.stream()
                    .map(value -> phrases.getOrDefault(key(facet, value), general(facet))
                            .said(denied, shown.apply(value)))
                    .collect(Collectors.joining(denied ? " and " : " or "));
        }
        Phrase phrase = general(facet);
        String between = phrase.saying().contains("\u201C" + HOLE) ? "\u201D or \u201C" : " or ";
        return phrase.said(denied, values.stream().map(shown).collect(Collectors.joining(between)));
    }

    private Phrase general(String facet) {
        String words = facet.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return phrases.getOrDefault(
                key(facet, ""), new Phrase("the " + words + " was " + HOLE, "the " + words + " was not " + HOLE));
    }

    private static String key(String facet, String value) {
        return facet + " " + value;
    }
}
