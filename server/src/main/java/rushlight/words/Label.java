package rushlight.words;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import rushlight.knowledge.Concept;

/**
 * A label that stands in a text.
 *
 * @param slug the concept it names
 * @param kind how much it says alone
 */
public record Label(String slug, Kind kind) {
    /** What sort of label it is, the most telling first. */
    public enum Kind {
        PREFERRED,
        OTHER,
        HIDDEN,
        /** Counts only where something else in the clause speaks for it. */
        CONTEXT
    }

    /** Every label of a concept, with what it says; the slug counts as another name. */
    public static void each(Concept concept, BiConsumer<String, Label> use) {
        give(Stream.of(concept.label()), concept, Kind.PREFERRED, use);
        give(Stream.concat(Stream.of(concept.slug()), concept.altLabels().stream()), concept, Kind.OTHER, use);
        give(concept.hiddenLabels().stream(), concept, Kind.HIDDEN, use);
        give(concept.contextLabels().stream(), concept, Kind.CONTEXT, use);
    }

    /** The labels without those that count only beside other evidence, unless there are no others. */
    public static List<Label> telling(List<Label> labels) {
        List<Label> alone =
                labels.stream().filter(label -> label.kind() != Kind.CONTEXT).toList();
        return alone.isEmpty() ? labels : alone;
    }

    private static void give(Stream<String> labels, Concept concept, Kind kind, BiConsumer<String, Label> use) {
        labels.forEach(label -> use.accept(label, new Label(concept.slug(), kind)));
    }
}
