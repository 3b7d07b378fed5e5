package rushlight.findings;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;

/**
 * One finding held against one prospect's tape.
 *
 * @param finding what was looked for
 * @param outcome what the count came to
 * @param games the games with an opportunity
 * @param heavyOpponent the opponent more than half of the sample was played against
 * @param bounds with none and with all of the unknown duties as his; empty where every duty is known
 * @param conditional the same by duty
 * @param mixedWith slugs of findings of the other kind that stand on the same reps
 * @param rootedIn slugs of standing findings that may explain it
 * @param evidence the reps
 * @param sentence what a person reads
 */
public record Judged(
        Finding finding,
        Outcome outcome,
        int games,
        Optional<String> heavyOpponent,
        List<Bound> bounds,
        List<Conditional> conditional,
        List<String> mixedWith,
        List<String> rootedIn,
        Evidence evidence,
        String sentence) {
    /**
     * An answer for the case that the unknown duties were all his, or that none was.
     *
     * @param unknownDuties {@code none} or {@code all}
     * @param rate the counts in that case
     * @param verdict the word in that case
     */
    public record Bound(String unknownDuties, Rate rate, Verdict verdict) {}

    /**
     * An answer for the case that the unknown duties were all this one.
     *
     * @param assignment slug of the duty, or {@code another}
     * @param rate the counts in that case
     * @param verdict the word in that case
     */
    public record Conditional(String assignment, Rate rate, Verdict verdict) {}

    public Judged {
        bounds = List.copyOf(bounds);
        conditional = List.copyOf(conditional);
        mixedWith = List.copyOf(mixedWith);
        rootedIn = List.copyOf(rootedIn);
    }

    /** Reps that would be chances too if their duty, which nobody knows, was his; 0 where every duty is known. */
    public int unknownDuties() {
        return bounds.isEmpty()
                ? 0
                : bounds.get(bounds.size() - 1).rate().opportunities()
                        - bounds.get(0).rate().opportunities();
    }

    /** The word the finding has earned. */
    public Verdict verdict() {
        return outcome.verdict();
    }

    /** What a coach should read first: safety, then what stands, then what weighs more, then what is surer. */
    public static Comparator<Judged> mostTellingFirst() {
        return Comparator.<Judged>comparingInt(
                        one -> one.finding.safety() && one.outcome.rate().events() > 0 ? 0 : 1)
                .thenComparingInt(one -> rank(one.verdict()))
                .thenComparing(one -> one.finding.severity(), Comparator.reverseOrder())
                .thenComparing(one -> one.outcome.probability().orElse(0), Comparator.reverseOrder())
                .thenComparing(one -> one.finding.slug());
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case CONFIRMED -> 0;
            case LIKELY -> 1;
            case WATCH -> 2;
            case CLEARED -> 3;
            case NOT_ENOUGH_TAPE -> 4;
        };
    }

    /** How far two evaluators see it alike; empty where nobody else has read his reps, or a rule concluded it. */
    public Optional<SeenAlike> seenAlike() {
        return evidence.tape()
                .readTwice()
                .flatMap(twice -> finding.counting().scope().map(scope -> SeenAlike.of(twice, scope)));
    }

    Judged with(List<String> mixed, List<String> rooted) {
        return new Judged(
                finding, outcome, games, heavyOpponent, bounds, conditional, mixed, rooted, evidence, sentence);
    }
}
