package rushlight.situation;

/**
 * Reps that two evaluators have read, as each of them did: place {@code i} of both tapes is the same rep.
 *
 * @param first the readings of whoever is believed first of the two
 * @param second the other's
 */
public record ReadTwice(Tape first, Tape second) {
    public ReadTwice {
        if (first.size() != second.size()) {
            throw new IllegalArgumentException(
                    "The same reps stand on both tapes, but they hold " + first.size() + " and " + second.size() + ".");
        }
    }
}
