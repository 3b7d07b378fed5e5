package rushlight.notes;

/**
 * A rep as a person left it.
 *
 * @param part empty where it begins as it was proposed; {@code b}, {@code c} and on where it was split off the rep of that ordinal
 * @param rep what it holds now; its ordinal is that of the proposed rep it began in
 */
public record ReviewedRep(String part, ProposedRep rep) {
    /** A rep as it was proposed. */
    static ReviewedRep of(ProposedRep rep) {
        return new ReviewedRep("", rep);
    }
}
