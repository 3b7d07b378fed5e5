package rushlight.film.csv;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.film.Times;
import rushlight.knowledge.ImplausiblePair;
import rushlight.knowledge.Taxonomy;

/** What two cells of one row must agree on. */
final class RowChecks {
    private static final String UNKNOWN = "unknown";
    private static final String STATED = "stated";

    private final Taxonomy taxonomy;

    RowChecks(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** Checks the tags of a row and fills in who says what his duty was. */
    void check(Map<String, List<String>> tags, RowNotes notes) {
        times(tags, notes);
        duty(tags, notes);
        taxonomy.film().implausible().forEach(pair -> implausible(pair, tags, notes));
    }

    private static void times(Map<String, List<String>> tags, RowNotes notes) {
        OptionalDouble start = seconds(tags, Columns.START);
        OptionalDouble end = seconds(tags, Columns.END);
        if (start.isPresent() && end.isPresent() && end.getAsDouble() < start.getAsDouble()) {
            String from = one(tags, Columns.START).orElse("");
            String to = one(tags, Columns.END).orElse("");
            notes.fault(
                    Columns.END,
                    to,
                    Fault.Code.ENDS_BEFORE_START,
                    "the rep ends at " + to + ", before it starts at " + from + ".");
        }
    }

    private static OptionalDouble seconds(Map<String, List<String>> tags, String column) {
        return one(tags, column).map(Times::seconds).orElseGet(OptionalDouble::empty);
    }

    private void duty(Map<String, List<String>> tags, RowNotes notes) {
        Optional<String> unsaid = taxonomy.film().unsaid(Columns.ASSIGNMENT);
        Optional<String> duty = one(tags, Columns.ASSIGNMENT).filter(slug -> !unsaid.equals(Optional.of(slug)));
        Optional<String> source = one(tags, Columns.ASSIGNMENT_SOURCE);
        if (source.isEmpty()) {
            tags.put(Columns.ASSIGNMENT_SOURCE, List.of(duty.isPresent() ? STATED : UNKNOWN));
        } else if (duty.isPresent() && source.get().equals(UNKNOWN)) {
            notes.fault(
                    Columns.ASSIGNMENT_SOURCE,
                    UNKNOWN,
                    Fault.Code.DUTY_SOURCE,
                    "the duty " + duty.get() + " is given, so somebody knows it; write stated or inferred, or leave"
                            + " the duty blank.");
        } else if (duty.isEmpty() && !source.get().equals(UNKNOWN)) {
            notes.warn(
                    Columns.ASSIGNMENT_SOURCE,
                    source.get(),
                    Fault.Code.DUTY_SOURCE,
                    "no duty is given, so \"" + source.get() + "\" was read as unknown.");
            tags.put(Columns.ASSIGNMENT_SOURCE, List.of(UNKNOWN));
        }
    }

    private void implausible(ImplausiblePair pair, Map<String, List<String>> tags, RowNotes notes) {
        if (!one(tags, pair.column()).equals(Optional.of(pair.value()))) {
            return;
        }
        for (String value : tags.getOrDefault(pair.other(), List.of())) {
            if (pair.others().stream().anyMatch(odd -> taxonomy.isA(value, odd))) {
                notes.warn(
                        pair.other(),
                        value,
                        Fault.Code.IMPLAUSIBLE,
                        "\"" + value + "\" is odd beside " + pair.column() + " = " + pair.value()
                                + "; both were kept.");
            }
        }
    }

    private static Optional<String> one(Map<String, List<String>> tags, String column) {
        List<String> values = tags.getOrDefault(column, List.of());
        return values.isEmpty() ? Optional.empty() : Optional.of(values.get(0));
    }
}
