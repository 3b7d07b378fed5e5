package rushlight.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** Finds the known words that a misspelled one may be. */
final class Slips {
    /** Words up to this length are repaired only where that completes a longer pattern. */
    static final int SHORT = 3;

    /** So many words of one text are looked up; a text with more has other trouble than slips. */
    static final int MOST = 24;

    /** Words up to this length keep their first letter: a slip there makes another word. */
    private static final int KEEPS_FIRST = 4;

    private static final int LONG = 8;
    private static final int SHORTEST = 3;
    private static final DamerauLevenshteinDistance DISTANCE = new DamerauLevenshteinDistance(2);

    private record Near(int distance, boolean sameFirst, String word) {}

    private final Map<Integer, List<String>> byLength = new HashMap<>();
    private final Map<String, Integer> letters = new HashMap<>();
    private final Set<String> never;
    private final Inflections inflections;

    Slips(Collection<List<String>> patterns, Inflections inflections, Set<String> never) {
        this.inflections = inflections;
        this.never = Set.copyOf(never);
        Set<String> forms = new TreeSet<>(inflections.forms());
        Set<String> bases = new TreeSet<>();
        patterns.forEach(words -> words.forEach(word -> bases.add(inflections.base(word))));
        for (String form : forms) {
            boolean plain = form.length() > SHORTEST && form.chars().allMatch(Character::isLetter);
            if (plain && bases.contains(inflections.base(form))) {
                byLength.computeIfAbsent(form.length(), n -> new ArrayList<>()).add(form);
                letters.put(form, mask(form));
            }
        }
    }

    /** The base of two words as one, such as "armover"; empty where that is none, or a common word: "now here" is not "nowhere". */
    String fused(String one, String other) {
        String fused = one + other;
        return inflections.knows(fused) && !never.contains(fused) ? inflections.base(fused) : "";
    }

    /** What the word may be, the nearest first; nothing where it is a word of its own, or too short. */
    List<String> nearest(String word) {
        if (word.length() < SHORTEST || never.contains(word) || !word.chars().allMatch(Character::isLetter)) {
            return List.of();
        }
        int most = word.length() < LONG ? 1 : 2;
        int mask = mask(word);
        List<Near> found = new ArrayList<>();
        for (int length = word.length() - most; length <= word.length() + most; length++) {
            for (String known : byLength.getOrDefault(length, List.of())) {
                if (Integer.bitCount(mask ^ letters.getOrDefault(known, 0)) > 2 * most) {
                    continue;
                }
                int distance = DISTANCE.apply(word, known);
                boolean sameFirst = known.charAt(0) == word.charAt(0);
                if (distance >= 0 && distance <= most && (sameFirst || word.length() > KEEPS_FIRST)) {
                    found.add(new Near(distance, sameFirst, known));
                }
            }
        }
        return found.stream()
                .sorted(Comparator.comparingInt(Near::distance)
                        .thenComparing(near -> !near.sameFirst())
                        .thenComparing(near -> inflections.base(near.word()).equals(near.word()) ? 0 : 1)
                        .thenComparing(Near::word))
                .map(Near::word)
                .toList();
    }

    private static int mask(String word) {
        int mask = 0;
        for (int i = 0; i < word.length(); i++) {
            mask |= 1 << (word.charAt(i) & 31);
        }
        return mask;
    }
}
