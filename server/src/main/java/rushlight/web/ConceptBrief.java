package rushlight.web;

import java.util.List;
import rushlight.knowledge.Concept;

/**
 * A concept in a list.
 *
 * @param kinds names of its classes
 * @param also other names in the trade
 * @param local whether it is the user's own
 * @param local whether it is the user's own
 */
public record ConceptBrief(
        String slug, String label, List<String> kinds, List<String> also, String definition, boolean local) {
    /** One concept in short. */
    public static ConceptBrief of(Concept concept) {
        return new ConceptBrief(
                concept.slug(),
                concept.label(),
                concept.classes().stream().sorted().toList(),
                concept.altLabels(),
                concept.definition(),
                concept.local());
    }
}
