package rushlight.film.csv;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Remembers what was offered for an unknown value, for the same slip comes again and again. After very many different
 * ones nothing more is offered: such a file is no film log, and each search costs milliseconds.
 */
final class Suggestions {
    private static final int MOST = 2000;

    private final Map<String, List<String>> offered = new HashMap<>();

    List<String> forValue(String place, String value, Supplier<List<String>> search) {
        String key = place + '\n' + value;
        List<String> known = offered.get(key);
        if (known == null) {
            known = offered.size() < MOST ? search.get() : List.of();
            if (offered.size() < MOST) {
                offered.put(key, known);
            }
        }
        return known;
    }
}
