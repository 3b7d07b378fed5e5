package rushlight.film.csv;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All faults of a file, and its warnings with those that say the same drawn together. */
final class FaultList {
    private record Same(Fault.Code code, String column, String message) {}

    private record Times(Fault first, int more) {}

    private final List<Fault> faults = new ArrayList<>();
    private final Map<Same, Times> warnings = new LinkedHashMap<>();

    void take(RowNotes notes) {
        faults.addAll(notes.faults());
        for (Fault warning : notes.warnings()) {
            warnings.merge(
                    new Same(warning.code(), warning.column(), warning.message()),
                    new Times(warning, 0),
                    (known, added) -> new Times(known.first(), known.more() + 1));
        }
    }

    void take(Fault fault) {
        faults.add(fault);
    }

    List<Fault> faults() {
        return faults;
    }

    List<Fault> warnings() {
        return warnings.values().stream().map(FaultList::told).toList();
    }

    private static Fault told(Times times) {
        Fault first = times.first();
        if (times.more() == 0) {
            return first;
        }
        String rows = times.more() == 1 ? "1 more row" : times.more() + " more rows";
        return new Fault(
                first.line(),
                first.column(),
                first.value(),
                first.code(),
                first.message() + " (And in " + rows + ".)",
                first.nearest());
    }
}
