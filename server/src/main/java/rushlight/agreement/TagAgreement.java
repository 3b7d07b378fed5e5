package rushlight.agreement;

/**
 * How two evaluators used one tag of a list column, over the reps on which both looked for it.
 *
 * @param tag slug of the concept, or the word
 * @param both reps on which both tagged it
 * @param firstOnly reps on which the first alone did
 * @param secondOnly reps on which the second alone did
 * @param agreed tagged or not tagged, as two labels
 */
public record TagAgreement(String tag, int both, int firstOnly, int secondOnly, Agreed agreed) {}
