package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Facet;
import rushlight.situation.Facets;
import rushlight.situation.Situation;
import rushlight.words.Label;
import rushlight.words.Lexicon;

/** Where terms stand in a rep: by the rows of {@code lexicon/facets.tsv}. */
final class Places {
    /**
     * Where a term stands.
     *
     * @param slug the term
     * @param role what part it plays
     * @param event whether it is something he did or that came of it
     * @param situation the reps that have it
     * @param kind the reps it could be on
     * @param order the number of its row: the smaller, the likelier it is meant
     */
    record Place(
            String slug, Chip.Role role, boolean event, Situation situation, Optional<Situation> kind, int order) {}

    private record Row(
            String term, Chip.Role role, boolean event, List<String> facets, Optional<Situation> kind, int order) {}

    private final Taxonomy taxonomy;
    private final Facets facets;
    private final List<Row> rows = new ArrayList<>();

    Places(Taxonomy taxonomy, Facets facets) {
        this.taxonomy = taxonomy;
        this.facets = facets;
        for (List<String> row : Lexicon.named("facets", "term", "role", "place", "facets", "kind")
                .rows()) {
            rows.add(new Row(
                    row.get(0),
                    Chip.Role.valueOf(row.get(1).toUpperCase(Locale.ROOT)),
                    row.get(2).equals("event"),
                    List.of(row.get(3).split(" ", -1)),
                    row.get(4).isEmpty() ? Optional.empty() : Optional.of(condition(row.get(4))),
                    rows.size()));
        }
    }

    Optional<Place> of(String slug) {
        Optional<Concept> concept = taxonomy.concept(slug);
        if (concept.isEmpty()) {
            return Optional.empty();
        }
        for (Row row : rows) {
            boolean fits =
                    taxonomy.isA(slug, row.term()) || concept.get().classes().contains(row.term());
            List<Situation> found = fits
                    ? row.facets().stream()
                            .filter(name -> holds(name, slug))
                            .map(name -> Situation.has(name, slug))
                            .toList()
                    : List.of();
            if (!found.isEmpty()) {
                return Optional.of(
                        new Place(slug, row.role(), row.event(), Situation.any(found), row.kind(), row.order()));
            }
        }
        return Optional.empty();
    }

    private boolean holds(String facet, String slug) {
        return facets.named(facet).filter(f -> f.values().contains(slug)).isPresent();
    }

    /** The places of the terms a label may name, the likeliest first. */
    List<Place> ranked(List<Label> labels) {
        return labels.stream()
                .sorted(Comparator.comparing(Label::kind).thenComparing(Label::slug))
                .flatMap(label -> of(label.slug()).stream())
                .sorted(Comparator.comparingInt(Place::order))
                .distinct()
                .toList();
    }

    /** A condition as the word lists write it: {@code facet=value}, {@code !facet=value}, {@code facet=1..4}. */
    Situation condition(String text) {
        if (text.startsWith("!")) {
            return Situation.not(condition(text.substring(1)));
        }
        int is = text.indexOf('=');
        String facet = text.substring(0, is);
        String value = text.substring(is + 1);
        if (facets.named(facet).filter(f -> f.kind() == Facet.Kind.NUMBER).isEmpty()) {
            return Situation.anyOf(facet, List.of(value.split("\\|", -1)));
        }
        String[] ends = value.split("\\.\\.", -1);
        return new Situation.Between(
                facet,
                OptionalInt.of(Integer.parseInt(ends[0])),
                OptionalInt.of(Integer.parseInt(ends[ends.length - 1])));
    }
}
