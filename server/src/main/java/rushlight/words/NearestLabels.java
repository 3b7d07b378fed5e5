package rushlight.words;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/**
 * The labels a person may have meant: fewest letters to change, add, drop or swap, in this order of the words or sorted.
 * Ties are settled by the alphabet, so that one text always gets the same answer.
 */
public final class NearestLabels {
    private static final int LONGEST = 60;
    private static final DamerauLevenshteinDistance DISTANCE = new DamerauLevenshteinDistance();

    /**
     * A label that can be found.
     *
     * @param label what is compared
     * @param shown what is offered
     * @param meaning two labels of one meaning are offered once
     */
    public record Entry(String label, String shown, String meaning) {}

    private record Keyed(String key, String sorted, Entry entry) {}

    private record Near(int distance, Entry entry) {}

    private final List<Keyed> labels;

    /** Searches among these labels. */
    public NearestLabels(Collection<Entry> entries) {
        this.labels = entries.stream()
                .map(entry -> {
                    String key = LabelKey.of(entry.label());
                    return new Keyed(key, sorted(key), entry);
                })
                .distinct()
                .toList();
    }

    /** Plain words, each its own meaning. */
    public static NearestLabels words(Collection<String> words) {
        return new NearestLabels(
                words.stream().map(word -> new Entry(word, word, word)).toList());
    }

    /** What to offer for a text, the nearest first. */
    public List<String> to(String text, int most) {
        String key = LabelKey.of(text.length() > LONGEST ? text.substring(0, LONGEST) : text);
        String sorted = sorted(key);
        Map<String, Near> best = new HashMap<>();
        for (Keyed label : labels) {
            Near near = new Near(distance(key, sorted, label), label.entry());
            best.merge(label.entry().meaning(), near, (a, b) -> order().compare(a, b) <= 0 ? a : b);
        }
        TreeSet<Near> inOrder =
                new TreeSet<>(order().thenComparing(near -> near.entry().meaning()));
        inOrder.addAll(best.values());
        return inOrder.stream().limit(most).map(near -> near.entry().shown()).toList();
    }

    private static Comparator<Near> order() {
        return Comparator.<Near>comparingInt(Near::distance)
                .thenComparing(near -> near.entry().shown());
    }

    private static int distance(String key, String sorted, Keyed label) {
        int asWritten = DISTANCE.apply(key, label.key());
        return asWritten < 2 ? asWritten : Math.min(asWritten, 1 + DISTANCE.apply(sorted, label.sorted()));
    }

    private static String sorted(String key) {
        String[] words = key.split(" ", -1);
        Arrays.sort(words);
        return String.join(" ", words);
    }
}
