package rushlight.film;

/**
 * Names one log: what an evaluator read of a prospect in a game.
 *
 * @param evaluator slug of the evaluator
 * @param prospect id of the prospect
 * @param game id of the game
 */
public record LogId(String evaluator, String prospect, String game) {}
