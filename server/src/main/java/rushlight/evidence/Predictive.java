package rushlight.evidence;

import java.util.OptionalInt;
import org.apache.commons.numbers.combinatorics.LogBinomialCoefficient;
import org.apache.commons.numbers.gamma.LogBeta;

/**
 * What an unchanged player would do in further opportunities, when all that is known of him is a count: the beta-binomial
 * distribution of the Jeffreys posterior, C(m, j) B(x + 1/2 + j, n - x + 1/2 + m - j) / B(x + 1/2, n - x + 1/2).
 *
 * @param before the count that is known, x of n
 * @param further m, the opportunities to come, 0 or more
 */
public record Predictive(Rate before, int further) {
    public Predictive {
        if (further < 0) {
            throw new IllegalArgumentException("Further opportunities are 0 or more, but these are " + further);
        }
    }

    /** The chance of exactly so many events, 0 to 1. */
    public double exactly(int events) {
        if (events < 0 || events > further) {
            return 0;
        }
        double a = before.events() + 0.5;
        double b = before.opportunities() - before.events() + 0.5;
        return Math.exp(LogBinomialCoefficient.value(further, events)
                + LogBeta.value(a + events, b + further - events)
                - LogBeta.value(a, b));
    }

    /** The chance of so many events or more, 0 to 1. */
    public double atLeast(int events) {
        double sum = 0;
        for (int j = Math.max(0, events); j <= further; j++) {
            sum += exactly(j);
        }
        return Math.min(1, sum);
    }

    /**
     * The fewest events of which so many or more have a chance of {@code most} at most.
     *
     * @param most a chance under 1
     * @return empty where even all of them have more
     */
    public OptionalInt fewestWithin(double most) {
        int events = further + 1;
        double tail = exactly(further);
        while (tail <= most) {
            events--;
            tail += exactly(events - 1);
        }
        return events > further ? OptionalInt.empty() : OptionalInt.of(events);
    }

    /** The chance of so many events or fewer, 0 to 1. */
    public double atMost(int events) {
        double sum = 0;
        for (int j = 0; j <= Math.min(events, further); j++) {
            sum += exactly(j);
        }
        return Math.min(1, sum);
    }
}
