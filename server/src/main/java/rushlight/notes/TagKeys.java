package rushlight.notes;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Names for tags that outlive a second reading: made of the concept, the words, and the how manyeth time the notes say so.
 * No time is in them: a file whose times were all shifted has the same keys. Where tags came or went, the order of the keys
 * tells which is which.
 */
public final class TagKeys {
    /** What the key of something said in general begins with. */
    public static final String GENERAL = "in-general/";

    private final Map<String, Integer> given = new HashMap<>();

    private TagKeys() {}

    /** Gives keys from the beginning of some notes on, piece after piece. */
    public static TagKeys begun() {
        return new TagKeys();
    }

    /** The keys of the tags of every rep, in the order of the reps and their tags. No two are alike. */
    public static List<List<String>> ofReps(Notes notes) {
        return begun().of(notes.reps());
    }

    /** The keys of what was said in general, in order; they are no keys of reps. */
    public static List<String> ofStatements(Notes notes) {
        return begun().inGeneral(notes.statements());
    }

    /** The keys of the tags of these reps, which go on behind those that were given. */
    public List<List<String>> of(List<ProposedRep> reps) {
        return reps.stream()
                .map(rep -> rep.tags().stream().map(this::key).toList())
                .toList();
    }

    /** The keys of statements in general, which go on behind those that were given. */
    public List<String> inGeneral(List<Mention> statements) {
        return statements.stream().map(tag -> GENERAL + key(tag)).toList();
    }

    private String key(Mention tag) {
        String words = words(tag.text());
        int nth = given.merge(tag.concept() + ":" + words, 1, Integer::sum);
        return tag.concept() + (nth == 1 ? "" : "#" + nth) + ":" + words;
    }

    /** Words as they stand in a key. */
    static String words(String text) {
        return text.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
    }
}
