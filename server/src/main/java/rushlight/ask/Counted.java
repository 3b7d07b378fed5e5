package rushlight.ask;

import java.util.Comparator;
import rushlight.evidence.Line;
import rushlight.evidence.Rate;
import rushlight.evidence.Remembered;
import rushlight.index.Count;

/** Counts with their likely range, and the order they stand in. */
final class Counted {
    private final Remembered remembered = new Remembered();

    Answer.Count of(Rate rate) {
        return new Answer.Count(rate, remembered.shown(rate), rate.opportunities() < Line.FLOOR);
    }

    Answer.Count of(Count count) {
        return of(new Rate(count.events(), count.opportunities()));
    }

    /** "16 of 18 (likely range 73 to 97 %)". */
    static String figures(Answer.Count count) {
        return times(count) + " (" + range(count) + ")";
    }

    /** "16 of 18". */
    static String times(Answer.Count count) {
        return count.rate().events() + " of " + count.rate().opportunities();
    }

    /** "likely range 73 to 97 %". */
    static String range(Answer.Count count) {
        return "likely range " + Math.round(100 * count.shown().low()) + " to "
                + Math.round(100 * count.shown().high()) + " %";
    }

    /** The lower end of the likely range, the most first; then events; or the upper end, the least first, then chances. */
    static Comparator<Answer.Count> order(Filter.Direction direction) {
        if (direction == Filter.Direction.LEAST) {
            return Comparator.<Answer.Count>comparingDouble(
                            count -> count.shown().high())
                    .thenComparing(count -> -count.rate().opportunities());
        }
        return Comparator.<Answer.Count>comparingDouble(count -> -count.shown().low())
                .thenComparing(count -> -count.rate().events());
    }

    static double score(Answer.Count count, Filter.Direction direction) {
        return direction == Filter.Direction.LEAST
                ? 1 - count.shown().high()
                : count.shown().low();
    }
}
