package rushlight.findings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.jena.graph.Node;
import rushlight.knowledge.Column;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situation;

/**
 * What must have been charted and not hidden before a rep may count: whatever an event reads, and whatever an opportunity
 * excludes. Not seen is not absent.
 */
final class SeenFirst {
    private static final String SEEN = "seen";
    private static final String CLASSES = "repClass";
    private static final Node SEEN_IN = Rl.term("seenIn");
    private static final Node READS = Rl.term("reads");

    private final Facts facts;
    private final Taxonomy taxonomy;
    private final FilmColumns film;
    private final Set<String> canBeHidden;

    SeenFirst(Ontology ontology, Taxonomy taxonomy) {
        this.facts = new Facts(ontology.graph());
        this.taxonomy = taxonomy;
        this.film = taxonomy.film();
        this.canBeHidden =
                film.ofFacet("notSeen").map(Column::oneOf).map(Set::copyOf).orElse(Set.of());
    }

    /** The opportunity, asked for only where it could be seen whether the event happened. */
    Situation opportunity(Situation opportunity, Situation event, Collection<String> needs) {
        Set<String> columns = new TreeSet<>(needs);
        addTo(columns, event.reads());
        addTo(columns, opportunity.readsAbsent());
        return with(opportunity, columns);
    }

    /** The reps that are like this, asked for only where it was looked for what they must not be. */
    Situation excluding(Situation reps) {
        Set<String> columns = new TreeSet<>();
        addTo(columns, reps.readsAbsent());
        return with(reps, columns);
    }

    /** The reps that may have been an opportunity, asked for only where the event could be seen. */
    Situation perhaps(Situation perhaps, Situation event) {
        Set<String> columns = new TreeSet<>();
        addTo(columns, event.reads());
        return with(perhaps, columns);
    }

    private Situation with(Situation opportunity, Set<String> columns) {
        columns.retainAll(canBeHidden);
        List<Situation> all = new ArrayList<>(List.of(opportunity));
        columns.forEach(column -> all.add(Situation.has(SEEN, column)));
        return Situation.all(all);
    }

    private void addTo(Set<String> columns, Map<String, Set<String>> reads) {
        reads.forEach((facet, values) -> {
            if (facet.equals(CLASSES)) {
                values.forEach(value -> columns.addAll(facts.texts(Rl.concept(value), READS)));
            } else if (!facet.equals(SEEN)) {
                columns.add(column(facet));
                values.forEach(value -> addViews(columns, value));
            }
        });
    }

    private String column(String facet) {
        return film.ofFacet(facet).orElseGet(film::exchange).name();
    }

    /** Words are no concepts and have no views; a grouping concept needs the views of everything it stands for. */
    private void addViews(Set<String> columns, String value) {
        if (taxonomy.concept(value).isPresent()) {
            taxonomy.narrower(value).forEach(one -> columns.addAll(facts.texts(Rl.concept(one), SEEN_IN)));
        }
    }
}
