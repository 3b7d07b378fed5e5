package rushlight.notes;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import rushlight.knowledge.Taxonomy;
import rushlight.words.Lexicon;

/** What spoken notes may name, by the word list {@code narration-kinds}. */
final class Kinds {
    /**
     * What is known of a term, or of the terms of a class.
     *
     * @param actor who does it as a rule
     * @param step whether it is a step of the rep
     * @param phase what it tells of the phase; empty where nothing
     * @param rank which is meant first where words may mean several, the smallest first
     * @param judged 1 where to name it is praise, -1 where it is blame, else 0
     */
    record Kind(Actor actor, boolean step, String phase, int rank, int judged) {}

    private static final String GOOD = "good";
    private static final String BAD = "bad";

    private final Taxonomy taxonomy;
    private final Map<String, Kind> kinds = new HashMap<>();

    Kinds(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
        Map<String, Kind> named = new HashMap<>();
        for (List<String> row : Lexicon.named("narration-kinds", "term", "actor", "step", "phase", "rank", "judged")
                .rows()) {
            named.put(
                    row.get(0),
                    new Kind(
                            Actor.valueOf(row.get(1).toUpperCase(Locale.ROOT)),
                            row.get(2).equals("yes"),
                            row.get(3),
                            Integer.parseInt(row.get(4)),
                            Map.of(GOOD, 1, BAD, -1).getOrDefault(row.get(5), 0)));
        }
        taxonomy.concepts()
                .forEach(concept -> concept.classes().stream()
                        .map(named::get)
                        .filter(Objects::nonNull)
                        .min(Comparator.comparingInt(Kind::rank))
                        .ifPresent(kind -> kinds.put(concept.slug(), kind)));
        kinds.putAll(named);
    }

    /** The kind of a concept, the one meant first where it has several; none where notes do not name such. */
    Optional<Kind> of(String slug) {
        return Optional.ofNullable(kinds.getOrDefault(slug, kinds.get(taxonomy.inUse(slug))));
    }
}
