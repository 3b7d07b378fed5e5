package rushlight.evidence;

/** On which side of a line a rate makes the statement true. */
public enum Side {
    /** The statement holds when the rate is over the line. */
    ABOVE,
    /** The statement holds when the rate is under the line. */
    BELOW;

    /** The other side. */
    public Side opposite() {
        return this == ABOVE ? BELOW : ABOVE;
    }
}
