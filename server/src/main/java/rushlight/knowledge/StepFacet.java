package rushlight.knowledge;

import java.util.Optional;
import java.util.Set;

/**
 * A facet that is read from the steps of an exchange.
 *
 * @param facet local name of the property
 * @param by whose steps: {@code him} or {@code blocker}
 * @param classes classes of the steps that count
 * @param passesOver where given, only the first step counts that belongs under something else than this concept
 * @param finishing where given, steps under this concept end a rep and are no later move
 */
public record StepFacet(
        String facet, String by, Set<String> classes, Optional<String> passesOver, Optional<String> finishing) {
    public StepFacet {
        classes = Set.copyOf(classes);
    }
}
