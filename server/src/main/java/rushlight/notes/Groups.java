package rushlight.notes;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rushlight.words.Lexicon;

/** Words that stand for each other in the patterns of spoken notes, by the word list {@code narration-groups}. */
final class Groups {
    private static final Pattern NAME = Pattern.compile("\\{([^}]*)\\}");
    private static final Pattern NO_LETTER = Pattern.compile("[^a-z]");

    private final Map<String, List<String>> groups = new TreeMap<>();

    Groups() {
        for (List<String> row :
                Lexicon.named("narration-groups", "group", "words").rows()) {
            groups.put(word(row.get(0)), Arrays.asList(row.get(1).split("\\|", -1)));
        }
    }

    /** Tells a matcher of them. */
    <T> rushlight.words.Matcher.Builder<T> in(rushlight.words.Matcher.Builder<T> builder) {
        groups.forEach(builder::group);
        return builder;
    }

    /**
     * A pattern with the name in braces as the word the matcher knows.
     *
     * @throws IllegalArgumentException where there is no such group
     */
    String spelled(String pattern) {
        Matcher name = NAME.matcher(pattern);
        StringBuilder spelled = new StringBuilder();
        while (name.find()) {
            String word = word(name.group(1));
            if (!groups.containsKey(word)) {
                throw new IllegalArgumentException("No group of words \"" + name.group(1) + "\" for " + pattern);
            }
            name.appendReplacement(spelled, word);
        }
        return name.appendTail(spelled).toString();
    }

    /** No text has such a word. */
    private static String word(String name) {
        return "zzgroup" + NO_LETTER.matcher(name).replaceAll("");
    }
}
