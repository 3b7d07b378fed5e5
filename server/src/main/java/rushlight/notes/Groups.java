package rushlight.notes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rushlight.words.Lexicon;
import rushlight.words.Phrasings;

/** Words that stand for each other in the patterns of spoken notes, by the word list {@code narration-groups}. */
final class Groups {
    private static final Pattern NAME = Pattern.compile("\\{([^}]*)\\}");
    private static final Pattern PLAIN = Pattern.compile("[a-z]+");
    private static final Pattern NO_LETTER = Pattern.compile("[^a-z]");

    private static final Pattern CHOICE = Pattern.compile("\\(([^)]*)\\)");

    /** A pattern of more ways than these has its choices kept as groups, so that the matcher need not hold every way. */
    private static final int MANY = 120;

    private static final int FEWEST = 3;
    private static final int LETTERS = 26;

    private final Map<String, List<String>> groups = new TreeMap<>();
    private final Map<List<String>, String> choices = new LinkedHashMap<>();
    private final Set<String> passedOver = Lexicon.named("small-words", "word", "weight").rows().stream()
            .filter(row -> row.get(1).equals("passed-over"))
            .map(row -> row.get(0))
            .collect(Collectors.toSet());

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

    /**
     * The ways to say a pattern, told to a matcher; single words to choose from stand as a group where there are many ways.
     *
     * @throws IllegalArgumentException where a group is named that there is not, or a bracket is not closed
     */
    <T> void add(rushlight.words.Matcher.Builder<T> builder, String pattern, T value) {
        String spelled = spelled(pattern);
        List<String> ways = isMany(spelled) ? Phrasings.of(grouped(builder, spelled)) : Phrasings.of(spelled);
        ways.forEach(words -> builder.add(words, value));
    }

    private static boolean isMany(String pattern) {
        long ways = 1;
        Matcher choice = CHOICE.matcher(pattern);
        while (choice.find()) {
            ways *= choice.group(1).split("\\|", -1).length;
        }
        return ways > MANY;
    }

    private String grouped(rushlight.words.Matcher.Builder<?> builder, String pattern) {
        Matcher choice = CHOICE.matcher(pattern);
        StringBuilder grouped = new StringBuilder();
        while (choice.find()) {
            List<String> all = Arrays.asList(choice.group(1).split("\\|", -1));
            List<String> single = all.stream()
                    .map(String::strip)
                    .filter(this::isPlain)
                    .distinct()
                    .sorted()
                    .toList();
            if (single.size() < FEWEST) {
                choice.appendReplacement(grouped, Matcher.quoteReplacement(choice.group()));
            } else {
                List<String> rest = new ArrayList<>(
                        all.stream().filter(way -> !isPlain(way.strip())).toList());
                rest.add(" " + name(builder, single) + " ");
                choice.appendReplacement(grouped, Matcher.quoteReplacement("(" + String.join("|", rest) + ")"));
            }
        }
        return choice.appendTail(grouped).toString();
    }

    private boolean isPlain(String way) {
        return PLAIN.matcher(way).matches() && !groups.containsKey(way) && !passedOver.contains(way);
    }

    private String name(rushlight.words.Matcher.Builder<?> builder, List<String> members) {
        return choices.computeIfAbsent(members, words -> {
            StringBuilder name = new StringBuilder("zzchoice");
            for (int n = choices.size(); n > 0; n /= LETTERS) {
                name.append((char) ('a' + n % LETTERS));
            }
            String word = name.append('q').toString();
            builder.group(word, words);
            return word;
        });
    }

    /** No text has such a word. */
    private static String word(String name) {
        return "zzgroup" + NO_LETTER.matcher(name).replaceAll("");
    }
}
