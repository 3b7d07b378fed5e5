package rushlight.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;

/** The labels of some of the book's concepts: what a column, or a step of an exchange, may say. */
public final class Vocabulary {
    private static final Meaning NONE = new Meaning.None();

    private final Map<String, Meaning> bySlug = new HashMap<>();
    private final Map<String, Meaning> byKey = new HashMap<>();
    private final NearestLabels nearest;

    private Vocabulary(Collection<Concept> concepts) {
        Map<String, Set<String>> slugs = new TreeMap<>();
        for (Concept concept : concepts) {
            bySlug.put(concept.slug(), new Meaning.One(concept.slug()));
            labels(concept)
                    .forEach(label -> slugs.computeIfAbsent(LabelKey.of(label), k -> new TreeSet<>())
                            .add(concept.slug()));
        }
        slugs.forEach((key, found) -> byKey.put(key, meaning(found)));
        this.nearest = nearest(concepts);
    }

    /** Every concept of the book. */
    public static Vocabulary of(Taxonomy taxonomy) {
        return new Vocabulary(taxonomy.concepts());
    }

    /** The concepts that have one of the classes and, where {@code under} is given, are narrower than it. */
    public static Vocabulary of(Taxonomy taxonomy, Set<String> classes, Optional<String> under) {
        return new Vocabulary(classes.stream()
                .sorted()
                .flatMap(name -> taxonomy.ofClass(name).stream())
                .distinct()
                .filter(concept -> under.isEmpty() || taxonomy.isA(concept.slug(), under.get()))
                .toList());
    }

    /** Just these concepts. */
    public static Vocabulary of(Collection<Concept> concepts) {
        return new Vocabulary(concepts);
    }

    /**
     * What a text means: a slug as it stands, else any label whatever its capitals, hyphens and apostrophes. A label
     * that counts only beside other evidence is taken here where no other concept shares it.
     */
    public Meaning meaning(String text) {
        Meaning slug = bySlug.get(text);
        return slug != null ? slug : byKey.getOrDefault(LabelKey.of(text), NONE);
    }

    /**
     * The concept a text names by some of its words: a label has them all, and every other concept with such a label is
     * narrower. None where that is not one concept.
     */
    public Meaning partly(String text, Taxonomy taxonomy) {
        List<String> words = words(text);
        List<String> found = new ArrayList<>();
        for (String slug : new TreeSet<>(bySlug.keySet())) {
            boolean has = taxonomy.concept(slug).stream()
                    .flatMap(Vocabulary::shownLabels)
                    .anyMatch(label -> words(label).containsAll(words));
            if (has) {
                found.add(slug);
            }
        }
        return found.stream()
                .filter(slug -> found.stream().allMatch(other -> taxonomy.isA(other, slug)))
                .findFirst()
                .<Meaning>map(Meaning.One::new)
                .orElse(NONE);
    }

    private static List<String> words(String text) {
        return List.of(LabelKey.of(text).split(" ", -1));
    }

    /** The labels nearest to a text that names nothing, the nearest first, each of another concept. */
    public List<String> nearest(String text, int most) {
        return nearest.to(text, most);
    }

    /** What a person can type to name this concept and no other: its label where that is clear, else another, else the slug. */
    public String typed(Concept concept) {
        return shownLabels(concept)
                .filter(label -> byKey.get(LabelKey.of(label)) instanceof Meaning.One)
                .findFirst()
                .orElse(concept.slug());
    }

    private NearestLabels nearest(Collection<Concept> concepts) {
        List<NearestLabels.Entry> entries = new ArrayList<>();
        for (Concept concept : concepts) {
            String preferred = shown(concept.label(), concept);
            entries.add(new NearestLabels.Entry(concept.slug(), preferred, concept.slug()));
            shownLabels(concept)
                    .forEach(label ->
                            entries.add(new NearestLabels.Entry(label, shown(label, concept), concept.slug())));
            Stream.concat(concept.hiddenLabels().stream(), concept.contextLabels().stream())
                    .forEach(label -> entries.add(new NearestLabels.Entry(label, preferred, concept.slug())));
        }
        return new NearestLabels(entries);
    }

    /** A label to offer: what a person types next must name this concept and no other. */
    private String shown(String label, Concept concept) {
        boolean clear = byKey.get(LabelKey.of(label)) instanceof Meaning.One;
        return clear ? label : concept.slug();
    }

    private static Stream<String> shownLabels(Concept concept) {
        return Stream.concat(Stream.of(concept.label()), concept.altLabels().stream());
    }

    private static Set<String> labels(Concept concept) {
        Set<String> labels = new LinkedHashSet<>(List.of(concept.slug(), concept.label()));
        labels.addAll(concept.altLabels());
        labels.addAll(concept.hiddenLabels());
        labels.addAll(concept.contextLabels());
        return labels;
    }

    private static Meaning meaning(Set<String> slugs) {
        return slugs.size() == 1 ? new Meaning.One(slugs.iterator().next()) : new Meaning.Several(List.copyOf(slugs));
    }
}
