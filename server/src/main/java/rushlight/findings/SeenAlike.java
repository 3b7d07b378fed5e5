package rushlight.findings;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Interval;
import rushlight.evidence.raters.Ac1;
import rushlight.evidence.raters.Alpha;
import rushlight.evidence.raters.Distance;
import rushlight.evidence.raters.Ratings;
import rushlight.situation.ReadTwice;

/**
 * How far two evaluators see a finding alike, over the reps that both call an opportunity.
 *
 * @param reps those reps, in the order of the tape
 * @param name {@code alpha}, or {@code AC1} where more than four fifths of the answers are one; empty under
 *     {@value Raters#ENOUGH} reps, or where one thing only was said
 * @param value the coefficient, at most 1
 * @param likely its range of 90 %
 * @param sentence what a person reads
 */
public record SeenAlike(
        List<Twice> reps, String name, OptionalDouble value, Optional<Interval> likely, String sentence) {
    /**
     * A rep that both call an opportunity.
     *
     * @param rep its name
     * @param game the game it is from
     * @param alike whether both say the same of the event
     */
    public record Twice(String rep, String game, boolean alike) {}

    public SeenAlike {
        reps = List.copyOf(reps);
    }

    /** How many of the reps are seen alike. */
    public long alike() {
        return reps.stream().filter(Twice::alike).count();
    }

    static SeenAlike of(ReadTwice twice, Counting.Scope scope) {
        BitSet both = Sample.and(
                twice.first().fitting(scope.opportunity()), twice.second().fitting(scope.opportunity()));
        BitSet first = twice.first().fitting(scope.event());
        BitSet second = twice.second().fitting(scope.event());
        List<Twice> reps = new ArrayList<>();
        List<Map.Entry<Boolean, Boolean>> said = new ArrayList<>();
        both.stream().forEach(rep -> {
            var sighting = twice.first().sighting(rep);
            reps.add(new Twice(sighting.rep(), sighting.game(), first.get(rep) == second.get(rep)));
            said.add(Map.entry(first.get(rep), second.get(rep)));
        });
        Ratings<Boolean> ratings = Ratings.pairs(said);
        boolean lopsided = ratings.largestShare() > Raters.LOPSIDED;
        OptionalDouble value = said.size() < Raters.ENOUGH
                ? OptionalDouble.empty()
                : lopsided ? Ac1.of(ratings) : Alpha.of(ratings, Distance.nominal());
        Optional<Interval> likely = value.isEmpty()
                ? Optional.empty()
                : lopsided ? Ac1.interval(ratings) : Alpha.interval(ratings, Distance.nominal());
        String name = value.isEmpty() ? "" : lopsided ? "AC1" : "alpha";
        return new SeenAlike(reps, name, value, likely, words(reps.size(), ratings.unanimous(), name, value, likely));
    }

    private static String words(int common, int same, String name, OptionalDouble value, Optional<Interval> likely) {
        if (common == 0) {
            return "Two taggers read some of his reps, and there is none that both call a chance of it.";
        }
        String counts = "Two taggers both call " + common + (common == 1 ? " rep a chance" : " reps a chance")
                + " and see it alike on " + same;
        if (common < Raters.ENOUGH) {
            return counts + "; " + Raters.ENOUGH + " are needed to say how far that is more than luck.";
        }
        if (value.isEmpty()) {
            return counts + "; only one thing was ever said, so agreement cannot be told from luck.";
        }
        return counts + " (" + name + " " + two(value.getAsDouble())
                + likely.map(range -> ", likely " + two(range.low()) + " to " + two(range.high()))
                        .orElse("")
                + "; 1 is full agreement, 0 is luck).";
    }

    private static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
