package rushlight.handbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.knowledge.Counters;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Taxonomy;

/** The pairings a concept takes part in, short: as the move, as the answer to it, as the counter. */
final class PairingsOf {
    private record Key(Optional<String> move, Optional<String> trigger) {}

    private final Taxonomy taxonomy;

    PairingsOf(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** Where the concept is a move: what is taught off it, answer by answer. Where it is an answer: what is taught against it. */
    List<TechniqueAnswer.Paired> of(String slug) {
        Counters counters = new Counters(taxonomy);
        Map<Key, Set<String>> found = new LinkedHashMap<>();
        counters.of(Optional.of(slug), Optional.empty()).stream()
                .filter(p -> p.primary().isPresent())
                .forEach(p -> put(found, new Key(Optional.of(slug), p.trigger()), p));
        counters.of(Optional.empty(), Optional.of(slug)).stream()
                .filter(p -> p.trigger().isPresent())
                .forEach(p -> put(found, new Key(Optional.empty(), Optional.of(slug)), p));
        return paired(found);
    }

    /** Where the concept is the counter that is taught. */
    List<TechniqueAnswer.Paired> counteredBy(String slug) {
        Map<Key, Set<String>> found = new LinkedHashMap<>();
        taxonomy.pairings().stream()
                .filter(p -> p.counter().equals(slug))
                .sorted(Comparator.<Pairing, String>comparing(p -> label(p.primary()))
                        .thenComparing(p -> label(p.trigger()))
                        .thenComparing(Pairing::id))
                .forEach(p -> put(found, new Key(p.primary(), p.trigger()), p));
        return paired(found);
    }

    private String label(Optional<String> slug) {
        return slug.map(taxonomy::label).orElse("");
    }

    private static void put(Map<Key, Set<String>> found, Key key, Pairing pairing) {
        found.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(pairing.counter());
    }

    private static List<TechniqueAnswer.Paired> paired(Map<Key, Set<String>> found) {
        List<TechniqueAnswer.Paired> result = new ArrayList<>();
        found.forEach((key, counters) ->
                result.add(new TechniqueAnswer.Paired(key.move(), key.trigger(), List.copyOf(counters))));
        return List.copyOf(result);
    }
}
