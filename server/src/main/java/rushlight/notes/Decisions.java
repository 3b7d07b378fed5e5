package rushlight.notes;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a person decided on proposed reps. Tags go by their {@link TagKeys keys}.
 *
 * @param chosen the tags that were decided on: whether they hold
 * @param phases the phase of a rep where it was chosen, by its ordinal, or by the tag at which it was split off
 * @param changed the concept that a tag should have been
 * @param added tags that the notes' reading lacks
 * @param splits tags at which a rep of its own begins
 * @param merges first tags of proposed reps that go on with the rep before
 */
public record Decisions(
        Map<String, Boolean> chosen,
        Map<String, String> phases,
        Map<String, String> changed,
        List<Added> added,
        Set<String> splits,
        Set<String> merges) {
    /** Nothing decided. */
    public static final Decisions NONE = new Decisions(Map.of(), Map.of(), Map.of(), List.of(), Set.of(), Set.of());

    /**
     * A tag that a person added.
     *
     * @param concept its slug
     * @param text the words it was said with; empty where none were picked
     * @param rep the ordinal of the proposed rep
     * @param after the key of the tag it stands behind; empty at the beginning of the rep
     */
    public record Added(String concept, String text, int rep, String after) {}

    public Decisions {
        chosen = sorted(chosen);
        phases = sorted(phases);
        changed = sorted(changed);
        added = List.copyOf(added);
        splits = Collections.unmodifiableSortedSet(new TreeSet<>(splits));
        merges = Collections.unmodifiableSortedSet(new TreeSet<>(merges));
    }

    private static <T> Map<String, T> sorted(Map<String, T> map) {
        return Collections.unmodifiableSortedMap(new TreeMap<>(map));
    }

    /** How many things were decided. */
    public int count() {
        return chosen.size() + phases.size() + changed.size() + added.size() + splits.size() + merges.size();
    }
}
