package rushlight.web;

import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Interval;
import rushlight.findings.Judged;
import rushlight.findings.Outcome;

/**
 * One finding of one prospect in a table.
 *
 * @param unknownDuties reps that are in neither count, because nobody knows what he was told; 0 or more
 */
public record FindingCell(
        String finding,
        String verdict,
        int opportunities,
        int events,
        int unknownDuties,
        OptionalDouble rate,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble line) {
    /** What was judged, in short. */
    public static FindingCell of(Judged judged) {
        Outcome outcome = judged.outcome();
        return new FindingCell(
                judged.finding().slug(),
                outcome.verdict().slug(),
                outcome.rate().opportunities(),
                outcome.rate().events(),
                judged.unknownDuties(),
                outcome.share(),
                end(outcome.shown().map(Interval::low)),
                end(outcome.shown().map(Interval::high)),
                judged.finding().standard().line());
    }

    private static OptionalDouble end(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
