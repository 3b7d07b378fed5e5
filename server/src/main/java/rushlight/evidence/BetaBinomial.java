package rushlight.evidence;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.gamma.LogBeta;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * How the true rates of a group of peers are spread: Beta(a, b), estimated from their counts. A rate that is read in its light is
 * drawn toward the middle of the group, the more the fewer opportunities it rests on (empirical Bayes).
 *
 * @param a over 0
 * @param b over 0
 */
public record BetaBinomial(double a, double b) {
    /** The fewest peers from which a group's spread is estimated; a proposal of the house. */
    public static final int PEERS = 10;

    /** The fewest opportunities with which one of them counts; a proposal of the house. */
    public static final int EACH = 8;

    /**
     * The most that a group may weigh, in opportunities. Where peers differ no more than chance makes them, their estimate
     * would weigh without end and no count of one's own could move it.
     */
    public static final double HEAVIEST = 50;

    public BetaBinomial {
        if (!(a > 0 && b > 0)) {
            throw new IllegalArgumentException(
                    "A beta distribution wants two numbers over 0, but has " + a + " and " + b);
        }
    }

    /**
     * A rate in the light of a group.
     *
     * @param mean the best guess of the true rate, 0 to 1
     * @param likely the range of 90 %, equal tails
     */
    public record Shrunken(double mean, Interval likely) {}

    /** The peers that say something of a group's spread: those with {@value #EACH} opportunities or more. */
    public static List<Rate> telling(List<Rate> peers) {
        return peers.stream().filter(one -> one.opportunities() >= EACH).toList();
    }

    /** What a group says; empty where fewer than {@value #PEERS} peers have {@value #EACH} opportunities each. */
    public static Optional<BetaBinomial> of(List<Rate> peers) {
        List<Rate> telling = telling(peers);
        return telling.size() < PEERS
                ? Optional.empty()
                : Optional.of(
                        likeliest(telling).orElseGet(() -> pooled(telling)).capped());
    }

    /**
     * The moments of the rates, less the noise that counting adds to them (weights by opportunities; Kleinman 1973, Journal of
     * the American Statistical Association 68:46-54). The variance of the raw rates alone takes that noise for spread and
     * shrinks far too little.
     *
     * @return empty where no spread is left beyond chance, or every rate is 0 or every rate 1
     */
    public static Optional<BetaBinomial> moments(List<Rate> peers) {
        double all = peers.stream().mapToInt(Rate::opportunities).sum();
        double mean = peers.stream().mapToInt(Rate::events).sum() / all;
        double spread = 0;
        double units = 0;
        double counts = 0;
        for (Rate one : peers) {
            int n = one.opportunities();
            spread += n == 0 ? 0 : n * Math.pow((double) one.events() / n - mean, 2);
            units += n == 0 ? 0 : 1 - n / all;
            counts += n * (1 - n / all);
        }
        double chance = mean * (1 - mean);
        double rho = (spread - chance * units) / (chance * (counts - units));
        return rho > 0 && rho < 1
                ? Optional.of(new BetaBinomial(mean * (1 / rho - 1), (1 - mean) * (1 / rho - 1)))
                : Optional.empty();
    }

    /** The a and b under which the counts are likeliest, begun at {@link #moments}; empty where those are. */
    public static Optional<BetaBinomial> likeliest(List<Rate> peers) {
        return moments(peers).map(start -> new Likeliest(peers).from(start));
    }

    /** A group that differs no more than chance does: its common rate, as heavy as a group may be. */
    public static BetaBinomial pooled(List<Rate> peers) {
        Rate all = peers.stream().reduce(new Rate(0, 0), Rate::plus);
        double mean = (all.events() + 0.5) / (all.opportunities() + 1);
        return new BetaBinomial(HEAVIEST * mean, HEAVIEST * (1 - mean));
    }

    /** The same middle, no heavier than {@value #HEAVIEST} opportunities. */
    public BetaBinomial capped() {
        double weight = a + b;
        return weight <= HEAVIEST ? this : new BetaBinomial(a * HEAVIEST / weight, b * HEAVIEST / weight);
    }

    /** The middle of the group, 0 to 1. */
    public double mean() {
        return a / (a + b);
    }

    /** What a count of one's own is best guessed at; without an opportunity it is what the group says. */
    public Shrunken shrink(Rate own) {
        double x = a + own.events();
        double rest = b + own.opportunities() - own.events();
        BetaDistribution posterior = BetaDistribution.of(x, rest);
        double tail = (1 - Rate.SHOWN) / 2;
        return new Shrunken(
                x / (x + rest),
                new Interval(posterior.inverseCumulativeProbability(tail), posterior.inverseSurvivalProbability(tail)));
    }

    /** The logarithm of the probability of these counts, the number of their orders included. */
    public double logLikelihood(List<Rate> counts) {
        return counts.stream()
                .mapToDouble(one -> -Math.log(one.opportunities() + 1.0)
                        - LogBeta.value(one.events() + 1.0, one.opportunities() - one.events() + 1.0)
                        + LogBeta.value(a + one.events(), b + one.opportunities() - one.events())
                        - LogBeta.value(a, b))
                .sum();
    }
}
