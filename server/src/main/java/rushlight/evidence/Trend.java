package rushlight.evidence;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.combinatorics.LogBinomialCoefficient;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether a rate rises or falls along an order, such as that of games: the score test of Cochran (1954, Biometrics 10:417-451)
 * and Armitage (1955, Biometrics 11:375-386), and its exact form, in which all margins are held.
 *
 * @param rates the counts in order; those without an opportunity do no harm
 * @param scores where each stands in the order: whole numbers from 0 up, one for each count
 */
public record Trend(List<Rate> rates, List<Integer> scores) {
    /** The fewest counts with an opportunity that are asked for a trend. */
    public static final int FEWEST = 4;

    private static final int FEW_EVENTS = 20;

    public Trend {
        rates = List.copyOf(rates);
        scores = List.copyOf(scores);
        if (rates.size() != scores.size() || scores.stream().anyMatch(score -> score < 0)) {
            throw new IllegalArgumentException("Each count has one score from 0 up, but these are " + scores);
        }
    }

    /** Over counts that stand one step apart. */
    public static Trend of(List<Rate> rates) {
        return new Trend(rates, IntStream.range(0, rates.size()).boxed().toList());
    }

    /** Whether there is enough to ask: four counts with an opportunity, and both an event and an opportunity without one. */
    public boolean canBeAsked() {
        Rate all = all();
        return rates.stream().filter(rate -> rate.opportunities() > 0).count() >= FEWEST
                && all.events() > 0
                && all.events() < all.opportunities();
    }

    /** The score test's z: over 0 where the rate rises. */
    public double z() {
        Rate all = all();
        double n = all.opportunities();
        double p = all.events() / n;
        double slope = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < rates.size(); i++) {
            double score = scores.get(i);
            slope += score * (rates.get(i).events() - rates.get(i).opportunities() * p);
            first += rates.get(i).opportunities() * score;
            second += rates.get(i).opportunities() * score * score;
        }
        double variance = p * (1 - p) * (second - first * first / n);
        return variance <= 0 ? 0 : slope / Math.sqrt(variance);
    }

    /** The two-sided p of the score test, 0 to 1; good for many events. */
    public double asymptoticP() {
        double z = z();
        return ChiSquaredDistribution.of(1).survivalProbability(z * z);
    }

    /**
     * The exact one-sided p that the rate rises ({@code ABOVE}) or falls along the order, all margins held; 0 to 1.
     *
     * @param midP whether half of the observed outcome's own probability is taken away
     */
    public double exactP(Side side, boolean midP) {
        double[] chances = sums();
        int observed = observed();
        double tail = 0;
        for (int sum = 0; sum < chances.length; sum++) {
            if (side == Side.ABOVE ? sum >= observed : sum <= observed) {
                tail += chances[sum];
            }
        }
        return Math.min(1, tail - (midP ? chances[observed] / 2 : 0));
    }

    /** Twice the smaller of the two exact tails, 1 at most. */
    public double exactP(boolean midP) {
        return Math.min(1, 2 * Math.min(exactP(Side.ABOVE, midP), exactP(Side.BELOW, midP)));
    }

    /** The two-sided p that is told: the exact mid-p under 20 events (or under 20 opportunities without one), else the score test's. */
    public double p() {
        Rate all = all();
        int fewer = Math.min(all.events(), all.opportunities() - all.events());
        return fewer < FEW_EVENTS ? exactP(true) : asymptoticP();
    }

    /** The chance of each sum of scores over the events, when all events are dealt out anew among the opportunities. */
    private double[] sums() {
        Rate all = all();
        int events = all.events();
        int highest = scores.stream().mapToInt(Integer::intValue).max().orElse(0);
        double[][] ways = new double[events + 1][events * highest + 1];
        ways[0][0] = 1;
        int dealt = 0;
        for (int i = 0; i < rates.size(); i++) {
            int n = rates.get(i).opportunities();
            ways = deal(ways, dealt, n, scores.get(i));
            dealt += n;
        }
        return ways[events];
    }

    /** The chances after {@code n} more opportunities with this score: given the events so far, how many fall here. */
    private static double[][] deal(double[][] ways, int dealt, int n, int score) {
        int events = ways.length - 1;
        double[][] next = new double[events + 1][ways[0].length];
        for (int so = 0; so <= Math.min(events, dealt); so++) {
            for (int here = 0; here <= Math.min(n, events - so); here++) {
                double part = Math.exp(logC(dealt, so) + logC(n, here) - logC(dealt + n, so + here));
                for (int sum = 0; sum + here * score < ways[so].length; sum++) {
                    next[so + here][sum + here * score] += ways[so][sum] * part;
                }
            }
        }
        return next;
    }

    private static double logC(int n, int k) {
        return LogBinomialCoefficient.value(n, k);
    }

    private int observed() {
        int sum = 0;
        for (int i = 0; i < rates.size(); i++) {
            sum += scores.get(i) * rates.get(i).events();
        }
        return sum;
    }

    private Rate all() {
        return rates.stream().reduce(new Rate(0, 0), Rate::plus);
    }
}
