package rushlight.film;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What one evaluator read of one rep: the cells of a film-log row with every label resolved to its slug.
 *
 * @param rep which rep
 * @param evaluator who read it
 * @param tags values by column name, blank cells left out; integers as decimal digits, {@code exchange} not among them
 * @param exchange the steps in order
 */
public record Reading(RepId rep, String evaluator, Map<String, List<String>> tags, List<Step> exchange) {
    public Reading {
        tags = Map.copyOf(tags);
        exchange = List.copyOf(exchange);
    }

    /** All values of a column; empty where the cell was blank. */
    public List<String> all(String column) {
        return tags.getOrDefault(column, List.of());
    }

    /** The value of a single-value column. */
    public Optional<String> one(String column) {
        List<String> values = all(column);
        return values.isEmpty() ? Optional.empty() : Optional.of(values.get(0));
    }

    /** The value of an integer column. */
    public OptionalInt number(String column) {
        return one(column).map(Integer::parseInt).map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }
}
