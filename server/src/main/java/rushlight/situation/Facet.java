package rushlight.situation;

import java.util.Locale;
import java.util.Set;

/**
 * One thing a situation may ask about.
 *
 * @param name local name of the property
 * @param kind what its values are
 * @param values every value a rep can have there, wider concepts included; empty for numbers
 * @param meant for people: the classes its concepts have, or the words it knows
 */
public record Facet(String name, Kind kind, Set<String> values, String meant) {
    /** What the values of a facet are. */
    public enum Kind {
        CONCEPT,
        WORD,
        NUMBER
    }

    public Facet {
        values = Set.copyOf(values);
    }

    /** The name as words: {@code secondMoveTime} is "second move time". */
    public String words() {
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
