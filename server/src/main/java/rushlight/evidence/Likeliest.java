package rushlight.evidence;

import java.util.List;
import org.apache.commons.numbers.gamma.Digamma;
import org.apache.commons.numbers.gamma.Trigamma;

/** Climbs to the beta-binomial under which counts are likeliest: Newton's steps in ln a and ln b, damped where they would fall. */
final class Likeliest {
    private static final int STEPS = 200;
    private static final double LEVEL = 1e-9;
    private static final double LONGEST = 2;
    /** So heavy a group is one rate for all; farther up nothing changes. */
    private static final double ENDLESS = 1e7;

    private final List<Rate> counts;

    Likeliest(List<Rate> counts) {
        this.counts = counts;
    }

    BetaBinomial from(BetaBinomial start) {
        BetaBinomial at = start;
        double height = at.logLikelihood(counts);
        double damping = 0;
        for (int i = 0; i < STEPS && damping < 1e12 && at.a() + at.b() < ENDLESS; i++) {
            Slope slope = slope(at);
            if (slope.size() < LEVEL) {
                return at;
            }
            BetaBinomial next = slope.step(at, damping);
            double higher = next.logLikelihood(counts);
            if (higher >= height) {
                at = next;
                height = higher;
                damping = damping < 1e-6 ? 0 : damping / 10;
            } else {
                damping = Math.max(1e-3, damping * 10);
            }
        }
        return at;
    }

    /** First and second derivatives in ln a and ln b. */
    private record Slope(double u, double v, double uu, double uv, double vv) {
        double size() {
            return Math.hypot(u, v);
        }

        /** A step uphill: where the ground is not curved downward, the damping makes it so. */
        BetaBinomial step(BetaBinomial at, double damping) {
            double extra = damping;
            while ((uu - extra) >= 0 || (uu - extra) * (vv - extra) - uv * uv <= 0) {
                extra = Math.max(1e-3, 2 * extra);
            }
            double p = uu - extra;
            double q = vv - extra;
            double det = p * q - uv * uv;
            double du = Math.max(-LONGEST, Math.min(LONGEST, -(q * u - uv * v) / det));
            double dv = Math.max(-LONGEST, Math.min(LONGEST, -(p * v - uv * u) / det));
            return new BetaBinomial(at.a() * Math.exp(du), at.b() * Math.exp(dv));
        }
    }

    private Slope slope(BetaBinomial at) {
        double a = at.a();
        double b = at.b();
        double first = 0;
        double second = 0;
        double firstTwice = 0;
        double secondTwice = 0;
        double cross = 0;
        for (Rate one : counts) {
            int x = one.events();
            int n = one.opportunities();
            double both = Digamma.value(a + b) - Digamma.value(a + b + n);
            double bothTwice = Trigamma.value(a + b) - Trigamma.value(a + b + n);
            first += both + Digamma.value(a + x) - Digamma.value(a);
            second += both + Digamma.value(b + n - x) - Digamma.value(b);
            firstTwice += bothTwice + Trigamma.value(a + x) - Trigamma.value(a);
            secondTwice += bothTwice + Trigamma.value(b + n - x) - Trigamma.value(b);
            cross += bothTwice;
        }
        return new Slope(
                a * first, b * second, a * a * firstTwice + a * first, a * b * cross, b * b * secondTwice + b * second);
    }
}
