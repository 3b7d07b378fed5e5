package rushlight.evidence;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.interval.BinomialConfidenceInterval;

/**
 * A count of events in a count of opportunities: x of n.
 *
 * <p>The posterior is Beta(x + 1/2, n - x + 1/2), that of the Jeffreys prior (Brown, Cai and DasGupta 2001, Statistical
 * Science 16:101-133).
 *
 * @param events how often it happened, 0 to {@code opportunities}
 * @param opportunities how often it could have happened, 0 or more
 */
public record Rate(int events, int opportunities) {
    /** The confidence of the interval that is shown beside a verdict: its end clears the line exactly at P = .95. */
    public static final double SHOWN = 0.90;

    public Rate {
        if (events < 0 || events > opportunities) {
            throw new IllegalArgumentException(
                    "Events are counted from 0 to the opportunities, but this is " + events + " of " + opportunities);
        }
    }

    /** Events by opportunities, 0 to 1; empty where nothing could have happened. */
    public OptionalDouble share() {
        return opportunities == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) events / opportunities);
    }

    /** This count and {@code other} together. */
    public Rate plus(Rate other) {
        return new Rate(events + other.events, opportunities + other.opportunities);
    }

    /** This count without {@code part}, which it contains. */
    public Rate minus(Rate part) {
        return new Rate(events - part.events, opportunities - part.opportunities);
    }

    /** The opportunities in which it did not happen, counted as the event. */
    public Rate mirrored() {
        return new Rate(opportunities - events, opportunities);
    }

    /**
     * The Wilson score interval (Wilson 1927; method 3 of Newcombe 1998, Statistics in Medicine 17:857-872).
     *
     * @param confidence two-sided, between 0 and 1, such as 0.95
     */
    public Interval wilson(double confidence) {
        return interval(BinomialConfidenceInterval.WILSON_SCORE, confidence);
    }

    /**
     * The Clopper-Pearson interval, never narrower than its confidence says (method 5 of Newcombe 1998).
     *
     * @param confidence two-sided, between 0 and 1, such as 0.95
     */
    public Interval clopperPearson(double confidence) {
        return interval(BinomialConfidenceInterval.CLOPPER_PEARSON, confidence);
    }

    /**
     * The equal-tailed Jeffreys interval, its end fixed at 0 for no event and at 1 for nothing but events.
     *
     * @param confidence two-sided, between 0 and 1, such as {@link #SHOWN}
     */
    public Interval jeffreys(double confidence) {
        return interval(BinomialConfidenceInterval.JEFFREYS, confidence);
    }

    /**
     * Pr(true rate lies on {@code side} of {@code line}) under the Jeffreys posterior, 0 to 1.
     *
     * @param line a rate, 0 to 1
     */
    public double probability(Side side, double line) {
        var posterior = BetaDistribution.of(events + 0.5, opportunities - events + 0.5);
        return side == Side.ABOVE ? posterior.survivalProbability(line) : posterior.cumulativeProbability(line);
    }

    private Interval interval(BinomialConfidenceInterval method, double confidence) {
        if (opportunities == 0) {
            return new Interval(0, 1);
        }
        var found = method.fromErrorRate(opportunities, events, 1 - confidence);
        return new Interval(found.getLowerBound(), found.getUpperBound());
    }
}
