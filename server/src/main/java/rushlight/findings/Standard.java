package rushlight.findings;

import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Line;
import rushlight.evidence.Side;

/**
 * What a finding's count is held against: the values in force, and the house's own where a user has set others.
 *
 * @param line the rate or difference that separates, 0 to 1; empty where the finding has none
 * @param houseLine the line as shipped; empty where the finding is a user's own or has none
 * @param side on which side of the line the finding holds; empty for whichever row is larger
 * @param minimum the opportunities it wants
 * @param houseMinimum the minimum as shipped
 * @param atMostWatch whether the word is never above watch
 */
public record Standard(
        OptionalDouble line,
        OptionalDouble houseLine,
        Optional<Side> side,
        int minimum,
        int houseMinimum,
        boolean atMostWatch) {
    /** The line in force; empty where the finding has none. A side that is left open is taken as above. */
    public Optional<Line> held() {
        return line.isEmpty()
                ? Optional.empty()
                : Optional.of(new Line(line.getAsDouble(), side.orElse(Side.ABOVE), minimum));
    }

    /** The opportunities a rate wants to be judged by: the minimum, and never fewer than {@link Line#FLOOR}. */
    public int enough() {
        return Math.max(Line.FLOOR, minimum);
    }

    /** Whether a user has set another line or minimum than the house. */
    public boolean isYours() {
        return !line.equals(houseLine) || minimum != houseMinimum;
    }
}
