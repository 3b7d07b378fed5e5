package rushlight.film.csv;

import java.util.ArrayList;
import java.util.List;

/** What is found wrong or odd in one row. */
final class RowNotes {
    private final int line;
    private final Suggestions suggestions;
    private final List<Fault> faults = new ArrayList<>(0);
    private final List<Fault> warnings = new ArrayList<>(0);

    RowNotes(int line, Suggestions suggestions) {
        this.line = line;
        this.suggestions = suggestions;
    }

    Suggestions suggestions() {
        return suggestions;
    }

    int line() {
        return line;
    }

    void fault(String column, String value, Fault.Code code, String message, List<String> nearest) {
        faults.add(new Fault(line, column, value, code, message, nearest));
    }

    void fault(String column, String value, Fault.Code code, String message) {
        fault(column, value, code, message, List.of());
    }

    void warn(String column, String value, Fault.Code code, String message) {
        warnings.add(new Fault(line, column, value, code, message, List.of()));
    }

    List<Fault> faults() {
        return faults;
    }

    List<Fault> warnings() {
        return warnings;
    }
}
