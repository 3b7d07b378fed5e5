package rushlight.web;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;

/**
 * A row that somebody typed.
 *
 * @param cells by column
 * @param charted list columns that were looked at though they are blank
 */
public record CellsIn(@JsonProperty(required = true) Map<String, String> cells, List<String> charted) {
    public CellsIn {
        cells = cells == null ? Map.of() : cells;
        charted = charted == null ? List.of() : List.copyOf(charted);
    }
}
