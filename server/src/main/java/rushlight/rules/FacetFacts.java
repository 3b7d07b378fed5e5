package rushlight.rules;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.knowledge.Column;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Rl;
import rushlight.knowledge.StepFacet;
import rushlight.knowledge.Taxonomy;

/** Lays out the facets of a reading as facts, as far as some rule asks about them. */
final class FacetFacts {
    private static final String FIRST = "First";

    /** One facet that rules ask about: all its values, or only some. */
    private record Asked(String facet, Node property, boolean concepts, boolean any, Set<String> values) {
        Node object(String value) {
            return concepts ? Rl.concept(value) : Term.text(value);
        }
    }

    private final Taxonomy taxonomy;
    private final Set<Asked> asked = new HashSet<>();
    private final Map<String, Asked> firsts = new HashMap<>();
    private final Set<String> blanks = new HashSet<>();
    private final Map<String, Node> numbers = new HashMap<>();

    FacetFacts(Taxonomy taxonomy, Mentions mentions) {
        this.taxonomy = taxonomy;
        FilmColumns film = taxonomy.film();
        Set<String> conceptFacets = new HashSet<>();
        film.stepFacets().stream().map(StepFacet::facet).forEach(conceptFacets::add);
        for (Column column : film.all()) {
            if (column.kind() == Column.Kind.CONCEPT) {
                conceptFacets.add(column.facet());
            }
            if (mentions.canUse(Term.BLANK, Term.text(column.name()))) {
                blanks.add(column.name());
            }
            Node first = Rl.term(column.facet() + FIRST);
            if (column.list() && mentions.asks(first)) {
                firsts.put(column.name(), asked(column.facet(), first, column.kind() == Column.Kind.CONCEPT, mentions));
            }
            if (column.kind() == Column.Kind.INTEGER && mentions.asks(Rl.term(column.facet()))) {
                numbers.put(column.facet(), Rl.term(column.facet()));
            }
        }
        for (String facet : film.facets()) {
            Node property = Rl.term(facet);
            if (!numbers.containsKey(facet) && mentions.asks(property)) {
                asked.add(asked(facet, property, conceptFacets.contains(facet), mentions));
            }
        }
    }

    private static Asked asked(String facet, Node property, boolean concepts, Mentions mentions) {
        Set<String> values = new HashSet<>();
        mentions.objects(property)
                .forEach(node -> values.add(node.isURI() ? Rl.slug(node) : node.getLiteralLexicalForm()));
        return new Asked(facet, property, concepts, mentions.asksAny(property), Set.copyOf(values));
    }

    /** Hands the facts of one reading to {@code out}. */
    void write(Node rep, Reading reading, RepFacts facts, Consumer<Triple> out) {
        for (Asked facet : asked) {
            Set<String> values = facts.closed().get(facet.facet());
            if (values != null) {
                write(rep, facet, values, out);
            }
        }
        firsts.forEach((column, facet) -> {
            List<String> values = reading.all(column);
            if (!values.isEmpty()) {
                write(rep, facet, facet.concepts() ? taxonomy.closure(values.get(0)) : Set.of(values.get(0)), out);
            }
        });
        blanks.stream()
                .filter(column -> reading.all(column).isEmpty())
                .forEach(column -> out.accept(Triple.create(rep, Term.BLANK, Term.text(column))));
        numbers.forEach((facet, property) ->
                facts.number(facet).ifPresent(value -> out.accept(Triple.create(rep, property, Term.number(value)))));
    }

    private static void write(Node rep, Asked facet, Set<String> values, Consumer<Triple> out) {
        for (String value : values) {
            if (facet.any() || facet.values().contains(value)) {
                out.accept(Triple.create(rep, facet.property(), facet.object(value)));
            }
        }
    }
}
