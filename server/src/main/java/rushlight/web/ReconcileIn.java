package rushlight.web;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What two evaluators settle on for a rep.
 *
 * @param prospect id of the prospect
 * @param game id of the game
 * @param rep name of the rep, the same with both
 * @param first one evaluator's reading
 * @param second the other's
 * @param settled etag of the reconciled reading that was seen; null where there was none
 * @param choices {@code first} or {@code second} by column; others are the first's, or the second's where the first is silent
 */
public record ReconcileIn(
        @JsonProperty(required = true) String prospect,
        @JsonProperty(required = true) String game,
        @JsonProperty(required = true) String rep,
        @JsonProperty(required = true) Side first,
        @JsonProperty(required = true) Side second,
        @Nullable String settled,
        Map<String, String> choices) {
    /**
     * One evaluator's reading as it was seen.
     *
     * @param evaluator slug or name
     * @param etag its version
     */
    public record Side(
            @JsonProperty(required = true) String evaluator,
            @JsonProperty(required = true) String etag) {}

    public ReconcileIn {
        choices = choices == null ? Map.of() : Map.copyOf(choices);
    }
}
