package rushlight.index;

/**
 * How often something happened where it could have.
 *
 * @param opportunities reps that fit the opportunity
 * @param events those of them that fit the event too
 */
public record Count(int opportunities, int events) {
    /** Both together. */
    public Count plus(Count other) {
        return new Count(opportunities + other.opportunities, events + other.events);
    }
}
