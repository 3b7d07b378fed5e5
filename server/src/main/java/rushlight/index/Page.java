package rushlight.index;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import rushlight.knowledge.Concept;

/**
 * Something of the book that can be looked up by its names.
 *
 * @param id its slug
 * @param label the name to show
 * @param names every name it goes by, the label among them
 * @param about what is told of it, as plain text
 */
public record Page(String id, String label, List<String> names, String about) {
    public Page {
        names = List.copyOf(names);
    }

    /** The page of a concept; found by every label it has, the spoken ones among them. */
    public static Page of(Concept concept) {
        List<String> names = new ArrayList<>(List.of(concept.label(), concept.slug()));
        // In an order of their own: a graph gives them in another each time the program starts.
        Stream.of(concept.altLabels(), concept.hiddenLabels(), concept.contextLabels())
                .flatMap(Collection::stream)
                .sorted()
                .forEach(names::add);
        return new Page(concept.slug(), concept.label(), names, concept.definition());
    }
}
