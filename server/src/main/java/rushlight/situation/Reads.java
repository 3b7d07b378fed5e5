package rushlight.situation;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Gathers which facets a situation reads, everywhere or only where a negation makes their absence count. */
final class Reads {
    private final boolean absentOnly;
    private final Map<String, Set<String>> found = new TreeMap<>();

    private Reads(boolean absentOnly) {
        this.absentOnly = absentOnly;
    }

    static Map<String, Set<String>> all(Situation situation) {
        Reads reads = new Reads(false);
        reads.gather(situation, false);
        return Collections.unmodifiableMap(reads.found);
    }

    static Map<String, Set<String>> absent(Situation situation) {
        Reads reads = new Reads(true);
        reads.gather(situation, false);
        return Collections.unmodifiableMap(reads.found);
    }

    private void gather(Situation situation, boolean negated) {
        if (situation instanceof Situation.Has has) {
            found(has.facet(), List.of(has.value()), negated);
        } else if (situation instanceof Situation.AnyOf any) {
            found(any.facet(), any.values(), negated);
        } else if (situation instanceof Situation.Between between) {
            found(between.facet(), List.of(), negated);
        } else if (situation instanceof Situation.And and) {
            and.parts().forEach(part -> gather(part, negated));
        } else if (situation instanceof Situation.Or or) {
            or.parts().forEach(part -> gather(part, negated));
        } else if (situation instanceof Situation.Not not) {
            gather(not.inner(), !negated);
        }
    }

    private void found(String facet, Collection<String> values, boolean negated) {
        if (negated || !absentOnly) {
            found.computeIfAbsent(facet, f -> new TreeSet<>()).addAll(values);
        }
    }
}
