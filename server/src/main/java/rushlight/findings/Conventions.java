package rushlight.findings;

import org.apache.jena.graph.Node;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Rl;
import rushlight.situation.Situation;
import rushlight.situation.Situations;

/**
 * How reps become counts, whatever the finding, as the book has it.
 *
 * @param lowConfidence reps that are kept and not counted because the evaluator was not sure
 * @param drops reps that are kept and not counted because they are no work on the ball or a blocker
 * @param unknownDuty reps whose duty nobody knows
 * @param dutyFacet the facet that holds a duty
 * @param primaryReps the reps over which his main move is looked for
 * @param primaryFacet the facet that holds the move
 * @param primaryMinimum the reps wanted before a main move is named
 */
record Conventions(
        Situation lowConfidence,
        Situation drops,
        Situation unknownDuty,
        String dutyFacet,
        Situation primaryReps,
        String primaryFacet,
        int primaryMinimum) {
    private static final Node COUNTING = Rl.term("counting");

    static Conventions of(Facts facts, Situations situations) {
        return new Conventions(
                situation(facts, situations, "lowConfidence"),
                situation(facts, situations, "drops"),
                situation(facts, situations, "unknownDuty"),
                slug(facts, "dutyFacet"),
                situation(facts, situations, "primaryReps"),
                slug(facts, "primaryFacet"),
                facts.text(COUNTING, "atLeast").map(Integer::parseInt).orElseThrow(() -> missing("atLeast")));
    }

    private static Situation situation(Facts facts, Situations situations, String property) {
        return situations.named(slug(facts, property));
    }

    private static String slug(Facts facts, String property) {
        return facts.slug(COUNTING, property).orElseThrow(() -> missing(property));
    }

    private static BrokenBookException missing(String property) {
        return new BrokenBookException("counting.ttl does not say rl:" + property + " of rl:counting.");
    }
}
