package rushlight.findings;

import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Verdict;
import rushlight.evidence.raters.Ac1;
import rushlight.evidence.raters.Alpha;
import rushlight.evidence.raters.Distance;
import rushlight.evidence.raters.Ratings;
import rushlight.situation.ReadTwice;

/**
 * How far two evaluators agree on the event of a finding, over the reps that both call an opportunity: what they do not agree
 * on cannot carry a sure word. Judged by Krippendorff's alpha, by Gwet's AC1 where more than four fifths of the answers are
 * one; the lines .667 and .800 are Krippendorff's customary ones, from memory.
 *
 * @param common reps that both call an opportunity
 * @param same those among them on which both say the same of the event
 * @param name {@code alpha} or {@code AC1}
 * @param value the coefficient, at most 1
 */
record Raters(int common, int same, String name, double value) {
    /** The fewest common reps from which anything is concluded. */
    static final int ENOUGH = 30;

    static final double LOPSIDED = 0.8;
    private static final double RELIABLE = 0.8;
    private static final double TENTATIVE = 0.667;

    /** Empty where both call too few reps an opportunity, or one answer only was given. */
    static Optional<Raters> of(ReadTwice twice, Counting.Scope scope) {
        BitSet both = Sample.and(
                twice.first().fitting(scope.opportunity()), twice.second().fitting(scope.opportunity()));
        if (both.cardinality() < ENOUGH) {
            return Optional.empty();
        }
        BitSet first = twice.first().fitting(scope.event());
        BitSet second = twice.second().fitting(scope.event());
        List<Map.Entry<Boolean, Boolean>> said = both.stream()
                .mapToObj(rep -> Map.entry(first.get(rep), second.get(rep)))
                .toList();
        Ratings<Boolean> ratings = Ratings.pairs(said);
        boolean lopsided = ratings.largestShare() > LOPSIDED;
        OptionalDouble value = lopsided ? Ac1.of(ratings) : Alpha.of(ratings, Distance.nominal());
        return value.isPresent()
                ? Optional.of(
                        new Raters(said.size(), ratings.unanimous(), lopsided ? "AC1" : "alpha", value.getAsDouble()))
                : Optional.empty();
    }

    /** A finding with no surer word, anywhere in it, than the agreement carries; why is added to its sentence. */
    Judged hold(Judged judged) {
        Outcome outcome = judged.outcome().with(held(judged.verdict()));
        List<Judged.Bound> bounds = judged.bounds().stream()
                .map(one -> new Judged.Bound(one.unknownDuties(), one.rate(), held(one.verdict())))
                .toList();
        List<Judged.Conditional> conditional = judged.conditional().stream()
                .map(one -> new Judged.Conditional(one.assignment(), one.rate(), held(one.verdict())))
                .toList();
        String said = Sentences.say(judged.finding(), outcome, judged.heavyOpponent(), bounds);
        return new Judged(
                judged.finding(),
                outcome,
                judged.games(),
                judged.heavyOpponent(),
                bounds,
                conditional,
                judged.mixedWith(),
                judged.rootedIn(),
                judged.evidence(),
                outcome.verdict() == judged.verdict() ? said : said + words());
    }

    /** The word that may be said: under .667 none above watch, under .800 none that is sure. */
    private Verdict held(Verdict word) {
        if (value < TENTATIVE) {
            return word.settled() || word.stands() ? Verdict.WATCH : word;
        }
        return value < RELIABLE ? word.lessSure() : word;
    }

    private String words() {
        return " Held back: two evaluators see it alike on " + same + " of the " + common + " reps both call a chance ("
                + String.format(Locale.ROOT, "%s %.2f", name, value) + ", "
                + (value < TENTATIVE ? "0.67 is needed to say more than open" : "0.80 is needed to be sure") + ").";
    }
}
