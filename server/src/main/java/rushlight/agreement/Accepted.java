package rushlight.agreement;

/**
 * A person's word that two names are of one rep.
 *
 * @param prospect id of the prospect
 * @param game id of the game
 * @param first the first evaluator's name for the rep
 * @param second the second's
 */
public record Accepted(String prospect, String game, String first, String second) {}
