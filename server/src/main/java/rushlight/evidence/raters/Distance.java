package rushlight.evidence.raters;

/**
 * How far two labels are from each other: 0 for the same, never negative, the same both ways.
 *
 * @param <T> what a label is
 */
@FunctionalInterface
public interface Distance<T> {
    /** The distance of two labels. */
    double between(T one, T other);

    /** All labels that differ differ alike. */
    static <T> Distance<T> nominal() {
        return (one, other) -> one.equals(other) ? 0 : 1;
    }
}
