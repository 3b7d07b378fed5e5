package rushlight.rules;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Triple;
import org.apache.jena.sparql.graph.GraphFactory;

/** The facts of one run, each put before the stratum that can use it. */
final class Sheet {
    private final Mentions inTags;
    private final Mentions inAbsence;
    private final Graph tags = GraphFactory.createGraphMem();
    private final Graph absence = GraphFactory.createGraphMem();
    private final Set<List<Triple>> shared = Collections.newSetFromMap(new IdentityHashMap<>());

    Sheet(Mentions inTags, Mentions inAbsence) {
        this.inTags = inTags;
        this.inAbsence = inAbsence;
    }

    void put(Triple fact) {
        if (inTags.canUse(fact)) {
            tags.add(fact);
        }
        if (inAbsence.canUse(fact)) {
            absence.add(fact);
        }
    }

    /** Puts facts of the book that many reps share; a list that was put before is passed over. */
    void putShared(List<Triple> facts) {
        if (!facts.isEmpty() && shared.add(facts)) {
            facts.forEach(this::put);
        }
    }

    /** Facts for the first stratum. */
    Graph tags() {
        return tags;
    }

    /** Facts for the second stratum; what the first concludes is added to them. */
    Graph absence() {
        return absence;
    }
}
