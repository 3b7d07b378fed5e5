package rushlight.film;

/**
 * One prospect's work on one snap, whoever read it.
 *
 * @param prospect id of the prospect
 * @param game id of the game
 * @param rep the evaluator's own name for the rep, unique in prospect and game
 */
public record RepId(String prospect, String game, String rep) {}
