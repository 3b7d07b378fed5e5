package rushlight.ask;

import java.util.List;
import rushlight.situation.Situation;

/**
 * What reps are counted.
 *
 * @param opportunity the reps that could show it
 * @param event the reps among them that do; the same as the opportunity where any such rep will do
 */
public record SituationPair(Situation opportunity, Situation event) {
    /** Reps of one kind, whatever came of them. */
    public static SituationPair just(Situation reps) {
        return new SituationPair(reps, reps);
    }

    /** What a rep that is an event is like. */
    public Situation both() {
        return opportunity.equals(event) ? event : Situation.all(List.of(opportunity, event));
    }
}
