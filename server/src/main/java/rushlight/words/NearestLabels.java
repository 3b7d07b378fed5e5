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
 * The labels a person may have meant: fewest letters to change, add, drop or swap, in this order of the words, in any
 * order, or word by word. Ties are settled by the longer common start, then by the alphabet, so that one text always gets the same answer.
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

    private record Keyed(String key, String sorted, List<String> words, Entry entry) {}

    private record Near(int distance, int sameStart, Entry entry) {}

    private final List<Keyed> labels;

    /** Searches among these labels. */
    public NearestLabels(Collection<Entry> entries) {
        this.labels = entries.stream().map(NearestLabels::keyed).distinct().toList();
    }

    /** Plain words, each its own meaning. */
    public static NearestLabels words(Collection<String> words) {
        return new NearestLabels(
                words.stream().map(word -> new Entry(word, word, word)).toList());
    }

    /** What to offer for a text, the nearest first. */
    public List<String> to(String text, int most) {
        String start = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
        Keyed wanted = keyed(new Entry(start, start, start));
        Map<String, Near> best = new HashMap<>();
        for (Keyed label : labels) {
            Near near = new Near(distance(wanted, label), sameStart(wanted.key(), label.key()), label.entry());
            best.merge(label.entry().meaning(), near, (a, b) -> order().compare(a, b) <= 0 ? a : b);
        }
        TreeSet<Near> inOrder =
                new TreeSet<>(order().thenComparing(near -> near.entry().meaning()));
        inOrder.addAll(best.values());
        return inOrder.stream().limit(most).map(near -> near.entry().shown()).toList();
    }

    private static Comparator<Near> order() {
        return Comparator.<Near>comparingInt(Near::distance)
                .thenComparing(Comparator.comparingInt(Near::sameStart).reversed())
                .thenComparing(near -> near.entry().shown());
    }

    private static int distance(Keyed text, Keyed label) {
        int asWritten = DISTANCE.apply(text.key(), label.key());
        if (asWritten < 2) {
            return asWritten;
        }
        int inAnyOrder = 1 + DISTANCE.apply(text.sorted(), label.sorted());
        return Math.min(asWritten, Math.min(inAnyOrder, wordByWord(text.words(), label.words())));
    }

    /** Each word of the text against the word of the label that is nearest to it; words left over cost one. */
    private static int wordByWord(List<String> text, List<String> label) {
        int distance = 1 + Math.max(0, label.size() - text.size());
        for (String word : text) {
            int nearest = word.length();
            for (String other : label) {
                nearest = Math.min(nearest, DISTANCE.apply(word, other));
            }
            distance += nearest;
        }
        return distance;
    }

    private static int sameStart(String a, String b) {
        int at = 0;
        while (at < a.length() && at < b.length() && a.charAt(at) == b.charAt(at)) {
            at++;
        }
        return at;
    }

    private static Keyed keyed(Entry entry) {
        String key = LabelKey.of(entry.label());
        List<String> words = Arrays.stream(key.split(" ", -1)).sorted().toList();
        return new Keyed(key, String.join(" ", words), words, entry);
    }
}
