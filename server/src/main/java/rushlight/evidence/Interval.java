package rushlight.evidence;

/**
 * A range with both ends in it: of a rate (0 to 1) or of a difference of two rates (-1 to 1).
 *
 * @param low the lower end
 * @param high the upper end, not under {@code low}
 */
public record Interval(double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "An interval runs from low to high, but this one from " + low + " to " + high);
        }
    }

    /** Whether {@code value} lies in the range, the ends included. */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }
}
