package rushlight.film;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Concept;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.StepFacet;
import rushlight.knowledge.Taxonomy;

/**
 * Which step of an exchange opened it, and which steps of his came after as moves of their own. The book says what counts:
 * the step facet that passes over a concept (steps that only prepare open nothing) and names a finishing concept
 * (steps under it end a rep and are no later move).
 */
public final class Openings {
    private final StepFacet facet;
    private final Set<String> opening = new HashSet<>();
    private final Set<String> later = new HashSet<>();

    private Openings(StepFacet facet, Taxonomy taxonomy) {
        this.facet = facet;
        Map<String, Boolean> remembered = new HashMap<>();
        for (String name : facet.classes()) {
            for (Concept concept : taxonomy.ofClass(name)) {
                if (standsAlone(concept.slug(), taxonomy, remembered)) {
                    opening.add(concept.slug());
                    if (facet.finishing()
                            .filter(end -> taxonomy.isA(concept.slug(), end))
                            .isEmpty()) {
                        later.add(concept.slug());
                    }
                }
            }
        }
    }

    /** What the book counts as an opening. */
    public static Openings of(Taxonomy taxonomy) {
        FilmColumns film = taxonomy.film();
        StepFacet facet = film.stepFacets().stream()
                .filter(f -> f.passesOver().isPresent() || f.finishing().isPresent())
                .findFirst()
                .orElseThrow(() -> new BrokenBookException("film.ttl has no step facet with rl:passesOver."));
        return new Openings(facet, taxonomy);
    }

    /** The facet that holds the opening step. */
    String facet() {
        return facet.facet();
    }

    /** Place of the step that opened the exchange, from 0. */
    public OptionalInt opening(List<Step> exchange) {
        for (int i = 0; i < exchange.size(); i++) {
            if (isHis(exchange.get(i)) && opening.contains(exchange.get(i).concept())) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** Places of his moves after the opening, from 0; steps that finish or only prepare are not among them. */
    public List<Integer> laterMoves(List<Step> exchange) {
        List<Integer> places = new ArrayList<>();
        for (int i = opening(exchange).orElse(exchange.size()) + 1; i < exchange.size(); i++) {
            if (isHis(exchange.get(i)) && later.contains(exchange.get(i).concept())) {
                places.add(i);
            }
        }
        return places;
    }

    private static boolean isHis(Step step) {
        return step.by() == Step.By.HIM;
    }

    /** Whether some way up from the concept does not lead through what is passed over. */
    private boolean standsAlone(String slug, Taxonomy taxonomy, Map<String, Boolean> remembered) {
        Boolean known = remembered.get(slug);
        if (known != null) {
            return known;
        }
        List<String> wider = taxonomy.concept(slug).map(Concept::broader).orElse(List.of());
        boolean alone = !facet.passesOver().equals(Optional.of(slug))
                && (wider.isEmpty() || wider.stream().anyMatch(up -> standsAlone(up, taxonomy, remembered)));
        remembered.put(slug, alone);
        return alone;
    }
}
