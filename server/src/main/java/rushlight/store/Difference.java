package rushlight.store;

import java.util.Set;
import org.apache.jena.sparql.core.Quad;

/**
 * What a change really changes.
 *
 * @param removed statements that were there and are not any more
 * @param added statements that were not there and are now
 */
record Difference(Set<Quad> removed, Set<Quad> added) {
    boolean isEmpty() {
        return removed.isEmpty() && added.isEmpty();
    }

    int size() {
        return removed.size() + added.size();
    }
}
