package rushlight.notes;

import java.util.Map;
import java.util.TreeMap;

/** Counts by the name of what is counted. */
final class Tallies {
    private final Map<String, Tally> byName = new TreeMap<>();

    void add(String name, Tally tally) {
        byName.merge(name, tally, Tally::plus);
    }

    Tally of(String name) {
        return byName.getOrDefault(name, Tally.NONE);
    }

    Map<String, Tally> all() {
        return Map.copyOf(byName);
    }
}
