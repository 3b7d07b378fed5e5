package rushlight.findings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rushlight.evidence.Tally;
import rushlight.situation.Situation;

/**
 * Which reps a finding counts, and how.
 *
 * @param scope its opportunities and events; empty where it is tried on other findings or concluded by a rule
 * @param split the facet by whose values it counts
 * @param pairs the rows whose difference it looks at; tried one after the other
 * @param parents slugs of the findings whose counts it looks at instead of a scope of its own
 * @param tape what else must be on film before it says anything: every one of these
 * @param tally the rare events it looks for among the latest opportunities
 */
public record Counting(
        Optional<Scope> scope,
        Optional<Split> split,
        List<Pair> pairs,
        List<String> parents,
        List<Wanted> tape,
        Optional<Tally> tally) {
    /**
     * Opportunities and events. That everything the event reads and the opportunity excludes was seen is part of the
     * opportunity.
     *
     * @param opportunity the reps that could show it
     * @param event the reps among them that do
     * @param duties the duties under which the rep is his chance; empty where any will do
     * @param perhaps reps outside of the opportunity that may have been his chance: they count in the bounds alone
     */
    public record Scope(Situation opportunity, Situation event, Set<String> duties, Optional<Situation> perhaps) {}

    /**
     * Counting by the values of a facet.
     *
     * @param facet local name of the facet
     * @param row which row is the finding's count
     * @param among the values that make rows, wider ones allowed; empty where every value as tagged makes one
     * @param check another row's (or the main row's) part that keeps the finding from standing
     */
    public record Split(String facet, Row row, List<String> among, Optional<Check> check) {}

    /** Which row of a split is the finding's count. */
    public enum Row {
        /** The row of his main move. */
        PRIMARY,
        /** The row with the most events, by all opportunities. */
        LARGEST,
        /** Every rep outside of the row with the most opportunities. */
        OTHERS
    }

    /**
     * A part of a row.
     *
     * @param share from 0 to 1
     * @param of the reps it looks for
     */
    public record Check(double share, Situation of) {}

    /**
     * Two situations that refine the opportunity.
     *
     * @param first the row expected to have the larger rate
     * @param second the other row
     * @param firstName name of the first row, for people and answers
     * @param secondName name of the second row
     */
    public record Pair(Situation first, Situation second, String firstName, String secondName) {}

    /**
     * Reps that must be on film.
     *
     * @param reps what they are like
     * @param atLeast how many
     */
    public record Wanted(Situation reps, int atLeast) {}

    public Counting {
        pairs = List.copyOf(pairs);
        parents = List.copyOf(parents);
        tape = List.copyOf(tape);
    }

    /** How it counts. */
    Measure measure(Polarity polarity, OptionalDouble line) {
        if (tally.isPresent()) {
            return Measure.COUNT;
        }
        if (!pairs.isEmpty()) {
            return Measure.DIFFERENCE;
        }
        if (polarity == Polarity.NOTE || scope.isEmpty()) {
            return Measure.NOTE;
        }
        return split.filter(s -> s.row() == Row.LARGEST).isPresent() ? Measure.SHARE : Measure.RATE;
    }
}
