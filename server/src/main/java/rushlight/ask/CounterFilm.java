package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.findings.Countable;
import rushlight.index.Count;
import rushlight.index.Footage;
import rushlight.index.Slice;
import rushlight.situation.Situation;

/** What film shows of a counter. */
final class CounterFilm {
    private static final Situation WON = Situation.has("outcome", "won");

    private final Countable countable;

    CounterFilm(Countable countable) {
        this.countable = countable;
    }

    /**
     * The reps in which he opened with the move, the blocker showed the answer and he went to a counter for it, this one
     * among his moves; events are won. Reps of low confidence are left out.
     */
    Count seen(Footage footage, Slice slice, Optional<String> move, Optional<String> answer, String counter) {
        List<Situation> parts = new ArrayList<>(List.of(countable.anyRep(), Situation.has("move", counter)));
        move.ifPresent(slug -> parts.add(Situation.has(countable.primaryFacet(), slug)));
        answer.ifPresent(slug -> {
            parts.add(Situation.has("behavior", slug));
            parts.add(Situation.has("repClass", "paired-counter")); // the class holds the order: move, answer, counter
        });
        return footage.counts(Situation.all(parts), WON, slice).values().stream()
                .reduce(new Count(0, 0), Count::plus);
    }
}
