package rushlight.findings;

import java.util.List;
import java.util.Set;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situation;
import rushlight.situation.Situations;

/** Which reps a question may count: the same that a finding would, so that both come to the same numbers. */
public final class Countable {
    private final Conventions conventions;
    private final SeenFirst seen;

    private Countable(Conventions conventions, SeenFirst seen) {
        this.conventions = conventions;
        this.seen = seen;
    }

    /** By the conventions of this book. */
    public static Countable of(Ontology ontology, Taxonomy taxonomy, Situations situations) {
        return new Countable(
                Conventions.of(new Facts(ontology.graph()), situations), new SeenFirst(ontology, taxonomy));
    }

    /** Every rep whose evaluator was sure of it. */
    public Situation anyRep() {
        return Situation.not(conventions.lowConfidence());
    }

    /** The reps whose evaluator was not sure. */
    public Situation leftOut() {
        return conventions.lowConfidence();
    }

    /**
     * The reps of an opportunity that count: the evaluator was sure of them, and whatever the event reads, or the
     * opportunity excludes, was charted and not hidden.
     *
     * @param event where it is the opportunity itself, only what it excludes must have been seen
     */
    public Situation opportunity(Situation opportunity, Situation event) {
        Situation looked = event.equals(opportunity)
                ? seen.excluding(opportunity)
                : seen.opportunity(opportunity, event, Set.of());
        return Situation.all(List.of(looked, anyRep()));
    }

    /** The reps over which a main move is looked for, those that count. */
    public Situation primaryReps() {
        return Situation.all(List.of(conventions.primaryReps(), anyRep()));
    }

    /** The facet that holds the move he opens with. */
    public String primaryFacet() {
        return conventions.primaryFacet();
    }
}
