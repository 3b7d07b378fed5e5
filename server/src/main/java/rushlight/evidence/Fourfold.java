package rushlight.evidence;

import org.apache.commons.statistics.distribution.HypergeometricDistribution;
import org.apache.commons.statistics.inference.AlternativeHypothesis;
import org.apache.commons.statistics.inference.FisherExactTest;

/**
 * Two counts side by side, tested with both margins fixed (Fisher's exact test) and with its mid-p, which takes half of the
 * observed table's probability away and so is less shy at small counts.
 *
 * @param first the count asked about
 * @param second the count it is compared with
 */
public record Fourfold(Rate first, Rate second) {
    /** Fisher's exact p, two-sided: all tables no more probable than this one; 0 to 1. */
    public double fisher() {
        return fisher(AlternativeHypothesis.TWO_SIDED);
    }

    /** Fisher's exact one-sided p that the first rate is over ({@code ABOVE}) or under the second; 0 to 1. */
    public double fisher(Side side) {
        return fisher(side == Side.ABOVE ? AlternativeHypothesis.GREATER_THAN : AlternativeHypothesis.LESS_THAN);
    }

    /** The two-sided mid-p; 0 to 1. */
    public double midP() {
        return fisher() - observed() / 2;
    }

    /** The one-sided mid-p that the first rate is over ({@code ABOVE}) or under the second; 0 to 1. */
    public double midP(Side side) {
        return fisher(side) - observed() / 2;
    }

    private double fisher(AlternativeHypothesis alternative) {
        int[][] table = {
            {first.events(), first.opportunities() - first.events()},
            {second.events(), second.opportunities() - second.events()}
        };
        return FisherExactTest.withDefaults().with(alternative).test(table).getPValue();
    }

    private double observed() {
        Rate both = first.plus(second);
        return HypergeometricDistribution.of(both.opportunities(), both.events(), first.opportunities())
                .probability(first.events());
    }
}
