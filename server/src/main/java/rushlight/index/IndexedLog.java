package rushlight.index;

import rushlight.film.Game;
import rushlight.film.Identity;
import rushlight.film.LogId;
import rushlight.film.Prospect;

/**
 * The head of a log as the index keeps it.
 *
 * @param evaluator who read it
 * @param prospect whose film, as the log knew him
 * @param game which game
 */
record IndexedLog(String evaluator, Prospect prospect, Game game) {
    LogId id() {
        return new LogId(Identity.slug(evaluator), prospect.id(), game.id());
    }
}
