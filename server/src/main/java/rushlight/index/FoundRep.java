package rushlight.index;

import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.situation.Sighting;

/**
 * A rep that a question found.
 *
 * @param prospect whose
 * @param game in which game
 * @param sighting where it is to be seen
 * @param event whether the event was there, or could have been
 * @param note what the evaluator wrote, with the words that were asked for; empty where nothing was written
 */
public record FoundRep(Prospect prospect, Game game, Sighting sighting, boolean event, Marked note) {}
