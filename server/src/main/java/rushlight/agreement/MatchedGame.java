package rushlight.agreement;

import java.util.List;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.film.Reading;

/**
 * A game that both have read of a prospect.
 *
 * @param prospect whose film
 * @param game which game
 * @param pairs the reps both read, in the order of the first evaluator
 * @param firstAlone readings of the first for which the second has none
 * @param secondAlone the other way round
 * @param proposals which of those alone may be of one rep
 */
public record MatchedGame(
        Prospect prospect,
        Game game,
        List<Pair> pairs,
        List<Reading> firstAlone,
        List<Reading> secondAlone,
        List<Proposal> proposals) {
    public MatchedGame {
        pairs = List.copyOf(pairs);
        firstAlone = List.copyOf(firstAlone);
        secondAlone = List.copyOf(secondAlone);
        proposals = List.copyOf(proposals);
    }
}
