package rushlight.film.csv;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Step;

/**
 * A row whose cells were read, before its prospect, game and evaluator are told apart from those of other rows.
 *
 * @param texts what stands in the columns that belong to the log, blank ones left out
 * @param tags values by column name
 * @param exchange the steps in order
 */
record Draft(Map<String, String> texts, Map<String, List<String>> tags, List<Step> exchange) {
    /** The same in little memory, for rows that wait for the end of their file. */
    Draft packed() {
        return new Draft(Map.of(Columns.REP, text(Columns.REP).orElse("")), Map.copyOf(tags), List.copyOf(exchange));
    }

    Optional<String> text(String column) {
        return Optional.ofNullable(texts.get(column));
    }

    Optional<String> one(String column) {
        List<String> values = tags.getOrDefault(column, List.of());
        return values.isEmpty() ? Optional.empty() : Optional.of(values.get(0));
    }
}
