package rushlight.evidence;

import org.apache.commons.numbers.gamma.LogBeta;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * How far the first of two independent rates lies over the second.
 *
 * @param first the rate that is expected to be larger
 * @param second the rate it is compared with
 */
public record Difference(Rate first, Rate second) {
    /** The difference of the two shares, -1 to 1; 0 stands for a share nobody knows. */
    public double observed() {
        return first.share().orElse(0) - second.share().orElse(0);
    }

    /** The second over the first. */
    public Difference turned() {
        return new Difference(/* first= */ second, /* second= */ first);
    }

    /**
     * Newcombe's hybrid score interval of the difference (method 10 of Newcombe 1998, Statistics in Medicine 17:873-890).
     *
     * @param confidence two-sided, between 0 and 1, such as 0.95
     */
    public Interval newcombe(double confidence) {
        double p1 = first.share().orElse(0);
        double p2 = second.share().orElse(0);
        Interval w1 = first.wilson(confidence);
        Interval w2 = second.wilson(confidence);
        double d = p1 - p2;
        return new Interval(
                d - Math.hypot(p1 - w1.low(), w2.high() - p2), d + Math.hypot(w1.high() - p1, p2 - w2.low()));
    }

    /**
     * Pr(p1 - p2 &gt; d) for two independent Jeffreys posteriors, 0 to 1, good to about 1e-10.
     *
     * <p>The integral of f1(p) F2(p - d) from d to 1, by Gauss-Legendre panels after p = d + (1 - d) sin&sup2; t, which takes
     * the half powers of the Jeffreys densities away at both ends.
     *
     * @param d a difference of rates, between -1 and 1
     */
    public double probabilityOver(double d) {
        if (!(d > -1 && d < 1)) {
            throw new IllegalArgumentException("A difference of rates lies between -1 and 1, but this is " + d);
        }
        return d < 0 ? 1 - turned().integral(-d) : integral(d);
    }

    private double integral(double d) {
        double a = first.events() + 0.5;
        double b = first.opportunities() - first.events() + 0.5;
        double logBeta = LogBeta.value(a, b);
        var below = BetaDistribution.of(second.events() + 0.5, second.opportunities() - second.events() + 0.5);
        int panels = 2 + (first.opportunities() + second.opportunities()) / 40;
        double width = Math.PI / 2 / panels;
        double sum = 0;
        for (int panel = 0; panel < panels; panel++) {
            for (int i = 0; i < GaussLegendre.POINTS; i++) {
                double t = (panel + GaussLegendre.point(i)) * width;
                double sin = Math.sin(t);
                double cos = Math.cos(t);
                double over = (1 - d) * sin * sin;
                double density =
                        Math.exp((a - 1) * Math.log(d + over) + (b - 1) * Math.log((1 - d) * cos * cos) - logBeta);
                sum += GaussLegendre.weight(i)
                        * width
                        * density
                        * below.cumulativeProbability(over)
                        * 2
                        * (1 - d)
                        * sin
                        * cos;
            }
        }
        return Math.min(1, sum);
    }
}
