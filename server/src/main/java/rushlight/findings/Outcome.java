package rushlight.findings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;

/**
 * What a count came to.
 *
 * @param verdict the word it has earned
 * @param rate events and opportunities
 * @param share events by opportunities, or the difference of two such shares; empty where there was no opportunity
 * @param shown its likely range: the 90 % Jeffreys interval, of a difference the 90 % Newcombe interval
 * @param probability that it is on the finding's side of the line; empty where there is no line
 * @param moreNeeded further opportunities that would settle it with an even chance; empty where it is settled, more than 30
 *     would be needed, or reps alone would not do
 * @param needsAnotherGame whether the count alone would have settled it, but it comes from one game or hangs on one
 * @param rows the rows a split or a difference counted
 * @param parent slug of the other finding whose count this looks at
 */
public record Outcome(
        Verdict verdict,
        Rate rate,
        OptionalDouble share,
        Optional<Interval> shown,
        OptionalDouble probability,
        OptionalInt moreNeeded,
        boolean needsAnotherGame,
        List<Row> rows,
        Optional<String> parent) {
    /**
     * One row of a count.
     *
     * @param value the value or name that makes the row
     * @param rate events and opportunities in it
     */
    public record Row(String value, Rate rate) {}

    public Outcome {
        rows = List.copyOf(rows);
    }

    Outcome atMostWatch() {
        return with(verdict.atMostWatch());
    }

    Outcome notEnough() {
        return with(Verdict.NOT_ENOUGH_TAPE);
    }

    Outcome with(Verdict word) {
        return word == verdict
                ? this
                : new Outcome(word, rate, share, shown, probability, OptionalInt.empty(), false, rows, parent);
    }
}
