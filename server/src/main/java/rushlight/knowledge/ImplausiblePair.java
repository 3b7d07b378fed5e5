package rushlight.knowledge;

import java.util.Set;

/**
 * Two cells of a row that hardly go together: worth a warning, no fault.
 *
 * @param column name of the one column
 * @param value its value
 * @param other name of the other column
 * @param others slugs that are odd beside {@code value}, narrower ones included
 */
public record ImplausiblePair(String column, String value, String other, Set<String> others) {
    public ImplausiblePair {
        others = Set.copyOf(others);
    }
}
