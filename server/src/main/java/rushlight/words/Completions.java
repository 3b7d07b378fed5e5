package rushlight.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rushlight.knowledge.Concept;

/**
 * What a text that is still being typed may become: labels that start with it, then labels with a word that starts with
 * it; where there is none, the nearest ones. Shown labels go before spoken and misspelled forms.
 */
public final class Completions {
    private static final int NONE = Integer.MAX_VALUE;

    /**
     * One thing it may become.
     *
     * @param concept what is meant
     * @param matched the label that fits what was typed
     */
    public record Completion(Concept concept, String matched) {}

    private record Label(String key, String written, int weight) {}

    private record Entry(Concept concept, List<Label> labels) {}

    private record Ranked(int rank, Completion completion) {}

    private final List<Entry> entries;
    private final Map<String, Concept> bySlug = new LinkedHashMap<>();
    private final NearestLabels nearest;

    private Completions(Collection<Concept> concepts) {
        this.entries = concepts.stream().map(Completions::entry).toList();
        concepts.forEach(concept -> bySlug.put(concept.slug(), concept));
        this.nearest = new NearestLabels(entries.stream()
                .flatMap(entry -> entry.labels().stream()
                        .map(label -> new NearestLabels.Entry(
                                label.written(),
                                entry.concept().slug(),
                                entry.concept().slug())))
                .toList());
    }

    /** Completes to these concepts. */
    public static Completions of(Collection<Concept> concepts) {
        return new Completions(concepts);
    }

    /** The likeliest first. */
    public List<Completion> of(String text, int most) {
        String key = LabelKey.of(text);
        List<Ranked> found = new ArrayList<>();
        for (Entry entry : entries) {
            ranked(entry, key, found);
        }
        if (found.isEmpty() && !key.isBlank()) {
            return nearest.to(text, most).stream()
                    .map(bySlug::get)
                    .map(concept -> new Completion(concept, concept.label()))
                    .toList();
        }
        return found.stream()
                .sorted(Comparator.comparingInt(Ranked::rank)
                        .thenComparing(one -> one.completion().matched().length())
                        .thenComparing(one -> one.completion().concept().label()))
                .limit(most)
                .map(Ranked::completion)
                .toList();
    }

    private static void ranked(Entry entry, String key, List<Ranked> found) {
        int best = NONE;
        Label matched = entry.labels().get(0);
        for (Label label : entry.labels()) {
            int rank = rank(label, key);
            if (rank < best) {
                best = rank;
                matched = label;
            }
        }
        if (best < NONE) {
            found.add(new Ranked(best, new Completion(entry.concept(), matched.written())));
        }
    }

    private static int rank(Label label, String key) {
        if (label.key().equals(key)) {
            return label.weight();
        }
        if (label.key().startsWith(key)) {
            return 10 + label.weight();
        }
        return label.key().contains(" " + key) ? 20 + label.weight() : NONE;
    }

    private static Entry entry(Concept concept) {
        List<Label> labels = new ArrayList<>();
        labels.add(new Label(LabelKey.of(concept.label()), concept.label(), 0));
        labels.add(new Label(LabelKey.of(concept.slug()), concept.slug(), 2));
        concept.altLabels().forEach(text -> labels.add(new Label(LabelKey.of(text), text, 1)));
        Stream.concat(concept.hiddenLabels().stream(), concept.contextLabels().stream())
                .forEach(text -> labels.add(new Label(LabelKey.of(text), text, 3)));
        return new Entry(concept, labels);
    }
}
