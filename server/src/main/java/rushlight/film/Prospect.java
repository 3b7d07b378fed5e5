package rushlight.film;

import java.util.OptionalDouble;

/**
 * A player whose film is read.
 *
 * @param id stable name in addresses, such as {@code jory-penwick}
 * @param name as written
 * @param position free text
 * @param heightCm height in centimeters
 * @param weightKg weight in kilograms
 * @param armCm arm length in centimeters
 * @param team free text
 * @param classYear free text
 * @param notes free text
 */
public record Prospect(
        String id,
        String name,
        String position,
        OptionalDouble heightCm,
        OptionalDouble weightKg,
        OptionalDouble armCm,
        String team,
        String classYear,
        String notes) {
    /** A prospect of whom only the name is known. */
    public static Prospect named(String id, String name) {
        OptionalDouble none = OptionalDouble.empty();
        return new Prospect(id, name, "", none, none, none, "", "", "");
    }
}
