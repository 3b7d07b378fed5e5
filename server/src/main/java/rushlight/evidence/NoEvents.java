package rushlight.evidence;

/** What a clean sheet still allows. */
public final class NoEvents {
    private NoEvents() {}

    /**
     * The exact one-sided upper bound of a rate after no event in n opportunities: 1 - (1 - confidence)^(1/n). The "3 over
     * n" of Hanley and Lippman-Hand 1983 (JAMA 249:1743) is its rough form at 0.95.
     *
     * @param opportunities 1 or more
     * @param confidence one-sided, between 0 and 1, such as 0.95
     * @return a rate, 0 to 1; its mirror image bounds n of n from below
     */
    public static double bound(int opportunities, double confidence) {
        if (opportunities < 1) {
            throw new IllegalArgumentException("A bound needs an opportunity, but there were " + opportunities);
        }
        return -Math.expm1(Math.log1p(-confidence) / opportunities);
    }
}
