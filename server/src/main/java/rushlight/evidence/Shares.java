package rushlight.evidence;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * What shares several kinds of things have for one of many people, few counts drawn toward what everybody does.
 *
 * <p>Every person's shares are taken to come from one Dirichlet distribution whose mean is what all people together do and
 * whose weight is what makes their counts most likely (the Dirichlet-multinomial; Minka 2000, "Estimating a Dirichlet
 * distribution"). His shares are then the mean of the posterior: (count + weight x mean) / (all his counts + weight).
 */
public final class Shares {
    private static final double LIGHTEST = Math.log(0.5);
    private static final double HEAVIEST = Math.log(2_000);
    private static final int STEPS = 40;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final Map<String, Double> mean;
    private final double weight;

    private Shares(Map<String, Double> mean, double weight) {
        this.mean = Map.copyOf(mean);
        this.weight = weight;
    }

    /**
     * Learns from the counts of many people.
     *
     * @param people for each of them how often each kind was counted
     */
    public static Shares of(Collection<? extends Map<String, Integer>> people) {
        Map<String, Double> sums = new HashMap<>();
        people.forEach(one -> one.forEach((kind, count) -> {
            if (count > 0) {
                sums.merge(kind, (double) count, Double::sum);
            }
        }));
        double all = sums.values().stream().mapToDouble(Double::doubleValue).sum();
        Map<String, Double> mean = new HashMap<>();
        sums.forEach((kind, sum) -> mean.put(kind, sum / all));
        return new Shares(mean, Math.exp(likeliest(mean, people)));
    }

    /** How many counts the common shares weigh. */
    public double weight() {
        return weight;
    }

    /** What share a kind has of everybody's together. */
    public double mean(String kind) {
        return mean.getOrDefault(kind, 0.0);
    }

    /** The kinds that anybody has. */
    public Set<String> kinds() {
        return new TreeSet<>(mean.keySet());
    }

    /** One person's shares of every kind; the common ones where nothing was counted of him. */
    public Map<String, Double> of(Map<String, Integer> counts) {
        int all = counts.values().stream().mapToInt(Integer::intValue).sum();
        Map<String, Double> shares = new HashMap<>();
        mean.forEach(
                (kind, common) -> shares.put(kind, (counts.getOrDefault(kind, 0) + weight * common) / (all + weight)));
        return shares;
    }

    /**
     * How far two people's shares lie apart: the Jensen-Shannon distance, 0 for the same and 1 for nothing in common (Lin
     * 1991, IEEE Transactions on Information Theory 37:145-151; that its root is a distance: Endres and Schindelin 2003, the
     * same 49:1858-1860).
     */
    public static double distance(Map<String, Double> one, Map<String, Double> other) {
        double sum = 0;
        for (Map.Entry<String, Double> share : one.entrySet()) {
            double p = share.getValue();
            double q = other.getOrDefault(share.getKey(), 0.0);
            double middle = (p + q) / 2;
            sum += part(p, middle) + part(q, middle);
        }
        for (Map.Entry<String, Double> share : other.entrySet()) {
            if (!one.containsKey(share.getKey())) {
                sum += part(share.getValue(), share.getValue() / 2);
            }
        }
        return Math.sqrt(Math.max(0, Math.min(1, sum / 2)));
    }

    private static double part(double share, double middle) {
        return share == 0 ? 0 : share * Math.log(share / middle) / Math.log(2);
    }

    /** The logarithm of the weight under which the counts are most likely, by golden-section search. */
    private static double likeliest(Map<String, Double> mean, Collection<? extends Map<String, Integer>> people) {
        double low = LIGHTEST;
        double high = HEAVIEST;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = likelihood(Math.exp(left), mean, people);
        double atRight = likelihood(Math.exp(right), mean, people);
        for (int step = 0; step < STEPS; step++) {
            if (atLeft > atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = likelihood(Math.exp(left), mean, people);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = likelihood(Math.exp(right), mean, people);
            }
        }
        return (low + high) / 2;
    }

    private static double likelihood(
            double weight, Map<String, Double> mean, Collection<? extends Map<String, Integer>> people) {
        Map<String, Double> prior = new HashMap<>();
        mean.forEach((kind, share) -> prior.put(kind, LogGamma.value(weight * share)));
        double sum = 0;
        for (Map<String, Integer> person : people) {
            int all = 0;
            for (Map.Entry<String, Integer> one : person.entrySet()) {
                int count = one.getValue();
                if (count > 0) {
                    double share = weight * mean.getOrDefault(one.getKey(), 0.0);
                    sum += LogGamma.value(count + share) - prior.getOrDefault(one.getKey(), 0.0);
                    all += count;
                }
            }
            sum += LogGamma.value(weight) - LogGamma.value(all + weight);
        }
        return sum;
    }
}
