package rushlight.knowledge;

import java.util.List;
import java.util.Set;

/**
 * One concept of the book: a move, a block, a fault, a drill.
 *
 * @param slug the name that never changes, such as {@code bull-rush}
 * @param classes local names of its classes, such as {@code RushMove}; a concept may have two
 * @param label the preferred label
 * @param altLabels other names in the trade
 * @param hiddenLabels spoken, inflected and misspelled forms, for finding only
 * @param contextLabels labels that count only beside other evidence, never alone
 * @param definition one sentence, or empty where the concept has none
 * @param broader slugs of the concepts directly above it
 * @param local whether the user's own file added it
 */
public record Concept(
        String slug,
        Set<String> classes,
        String label,
        List<String> altLabels,
        List<String> hiddenLabels,
        List<String> contextLabels,
        String definition,
        List<String> broader,
        boolean local) {
    public Concept {
        classes = Set.copyOf(classes);
        altLabels = List.copyOf(altLabels);
        hiddenLabels = List.copyOf(hiddenLabels);
        contextLabels = List.copyOf(contextLabels);
        broader = List.copyOf(broader);
    }
}
