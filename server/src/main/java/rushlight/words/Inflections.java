package rushlight.words;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The forms of the words one knows. Forms are made from known words instead of cut from unknown ones, so that no word is
 * taken for one that only looks alike.
 */
public final class Inflections {
    private static final String VOWELS = "aeiou";

    private final Map<String, String> base = new HashMap<>();

    private Inflections(Collection<String> known, Map<String, String> irregular) {
        Set<String> ordered = new TreeSet<>(known);
        Map<String, String> stems = new HashMap<>();
        for (String word : ordered) {
            stems.put(word, stem(word, ordered, irregular));
        }
        Set<String> bases = new TreeSet<>(stems.values());
        for (String stem : bases) {
            forms(stem).forEach(form -> base.putIfAbsent(form, stem));
        }
        irregular.forEach((form, stem) -> {
            if (bases.contains(stem)) {
                base.put(form, stem);
            }
        });
        stems.forEach(base::put);
    }

    /**
     * For these words.
     *
     * @param known every word of the patterns
     * @param irregular forms that follow no rule, each with its base: {@code spun} of {@code spin}
     */
    public static Inflections of(Collection<String> known, Map<String, String> irregular) {
        return new Inflections(known, irregular);
    }

    /** The base of a form; the word itself where nothing is known of it. */
    public String base(String word) {
        return base.getOrDefault(word, word);
    }

    /** Whether the word is a form of a known one. */
    public boolean knows(String word) {
        return base.containsKey(word);
    }

    /** Every form that is known. */
    public Set<String> forms() {
        return Set.copyOf(base.keySet());
    }

    private static String stem(String word, Set<String> known, Map<String, String> irregular) {
        String special = irregular.get(word);
        if (special != null) {
            return special;
        }
        Set<String> candidates = new LinkedHashSet<>();
        if (word.length() > 3
                && word.endsWith("s")
                && !word.endsWith("ss")
                && !word.endsWith("us")
                && !word.endsWith("is")) {
            if (word.endsWith("ies") && word.length() > 4) {
                candidates.add(word.substring(0, word.length() - 3) + "y");
            } else if (word.matches(".*(s|x|z|ch|sh)es")) {
                candidates.add(word.substring(0, word.length() - 2));
                candidates.add(word.substring(0, word.length() - 1));
            } else {
                candidates.add(word.substring(0, word.length() - 1));
            }
        }
        cut(word, "ed", candidates);
        cut(word, "ing", candidates);
        for (String candidate : candidates) {
            if (known.contains(candidate)) {
                return irregular.getOrDefault(candidate, candidate);
            }
        }
        return word.endsWith("s") && !candidates.isEmpty()
                ? candidates.iterator().next()
                : word;
    }

    private static void cut(String word, String end, Set<String> candidates) {
        if (word.endsWith(end) && word.length() > end.length() + 2) {
            String rest = word.substring(0, word.length() - end.length());
            candidates.add(rest);
            candidates.add(rest + "e");
            if (isDoubled(rest)) {
                candidates.add(rest.substring(0, rest.length() - 1));
            }
            if (rest.endsWith("i")) {
                candidates.add(rest.substring(0, rest.length() - 1) + "y");
            }
        }
    }

    private static boolean isDoubled(String word) {
        int n = word.length();
        return n > 2 && word.charAt(n - 1) == word.charAt(n - 2) && VOWELS.indexOf(word.charAt(n - 1)) < 0;
    }

    private static Set<String> forms(String word) {
        Set<String> forms = new LinkedHashSet<>(Set.of(word));
        if (word.length() < 2 || !Character.isLetter(word.charAt(word.length() - 1))) {
            return forms;
        }
        String shorter = word.substring(0, word.length() - 1);
        char last = word.charAt(word.length() - 1);
        char before = word.charAt(word.length() - 2);
        forms.add(word + "s");
        if (last == 'y' && VOWELS.indexOf(before) < 0) {
            forms.add(shorter + "ies");
            forms.add(shorter + "ied");
        }
        if (word.matches(".*(s|x|z|ch|sh|o)")) {
            forms.add(word + "es");
        }
        if (last == 'e') {
            forms.add(word + "d");
            forms.add(shorter + "ing");
        } else {
            forms.add(word + "ed");
            forms.add(word + "ing");
        }
        boolean closed = word.length() > 2
                && VOWELS.indexOf(last) < 0
                && "wxy".indexOf(last) < 0
                && VOWELS.indexOf(before) >= 0
                && VOWELS.indexOf(word.charAt(word.length() - 3)) < 0;
        if (closed) {
            forms.add(word + last + "ed");
            forms.add(word + last + "ing");
        }
        return forms;
    }
}
