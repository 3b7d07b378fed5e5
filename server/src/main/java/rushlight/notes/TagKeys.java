package rushlight.notes;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Names for tags that outlive a second reading: made of the concept, the words and the time of the rep, so that what a person
 * decided still holds when the notes were corrected elsewhere or the book has grown.
 */
public final class TagKeys {
    private static final String IN_GENERAL = "in-general";

    private final Map<String, Integer> given = new HashMap<>();

    private TagKeys() {}

    /** The keys of the tags of every rep, in the order of the reps and their tags. No two are alike. */
    public static List<List<String>> ofReps(Notes notes) {
        TagKeys keys = new TagKeys();
        return notes.reps().stream()
                .map(rep ->
                        rep.tags().stream().map(tag -> keys.key(tag, when(rep))).toList())
                .toList();
    }

    /** The keys of what was said in general, in order. */
    public static List<String> ofStatements(Notes notes) {
        TagKeys keys = new TagKeys();
        return notes.statements().stream().map(tag -> keys.key(tag, IN_GENERAL)).toList();
    }

    private static String when(ProposedRep rep) {
        OptionalDouble start = rep.start();
        return start.isPresent() ? Math.round(start.getAsDouble()) + "s" : "rep-" + rep.ordinal();
    }

    private String key(Mention tag, String when) {
        String words = tag.text().toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
        String key = tag.concept() + ":" + when + ":" + words;
        int nth = given.merge(key, 1, Integer::sum);
        return nth == 1 ? key : key + ":" + nth;
    }
}
