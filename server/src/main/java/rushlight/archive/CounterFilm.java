package rushlight.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.evidence.Rate;
import rushlight.index.Count;
import rushlight.index.Footage;
import rushlight.situation.Situation;

/** What the film of a folder shows of a counter. The facets are the film log's own. */
final class CounterFilm {
    private static final Situation WON = Situation.has("outcome", "won");

    private CounterFilm() {}

    /** The reps in which he opened with the move, the blocker showed the answer and he went to a counter for it,
     * this one among his moves; events are won. Reps of low confidence are left out. */
    static Rate seen(Footage footage, Optional<String> move, Optional<String> answer, String counter) {
        List<Situation> parts = new ArrayList<>();
        parts.add(Situation.has("move", counter));
        parts.add(Situation.not(Situation.has("confidence", "low")));
        move.ifPresent(slug -> parts.add(Situation.has("openingMove", slug)));
        answer.ifPresent(slug -> {
            parts.add(Situation.has("behavior", slug));
            parts.add(Situation.has("repClass", "paired-counter")); // the class holds the order: move, answer, counter
        });
        int reps = 0;
        int won = 0;
        for (Count count : footage.counts(Situation.all(parts), WON).values()) {
            reps += count.opportunities();
            won += count.events();
        }
        return new Rate(won, reps);
    }
}
