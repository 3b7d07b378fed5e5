package rushlight.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Numbering;
import rushlight.knowledge.Taxonomy;

/** Finds the number of a front in what a person says: {@code a 7}, {@code 4-i}, and the number with the words the book says beside one. */
public final class FrontNumbers {
    private static final Set<String> ARTICLES = Set.of("a", "an", "the");

    private final Map<String, String> numbers;
    private final Set<String> beside = new HashSet<>();

    private FrontNumbers(Taxonomy taxonomy) {
        this.numbers = taxonomy.numbering().numbers();
        for (Concept concept : taxonomy.concepts()) {
            if (taxonomy.numbering().positionOf(concept.slug()).isPresent()) {
                learn(concept.slug());
                learn(concept.label());
                concept.altLabels().forEach(this::learn);
                concept.hiddenLabels().forEach(this::learn);
            }
        }
    }

    /** Learns from the numbers and the labels of the book which words stand beside a number. */
    public static FrontNumbers of(Taxonomy taxonomy) {
        return new FrontNumbers(taxonomy);
    }

    /** The number a text is, as the systems write it; empty where it is none. */
    public Optional<String> in(String text) {
        List<String> words = new ArrayList<>(words(text));
        words.removeIf(ARTICLES::contains);
        String whole = numbers.get(Numbering.key(String.join("", words)));
        if (whole != null) {
            return Optional.of(whole);
        }
        words.removeIf(beside::contains);
        return words.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(numbers.get(Numbering.key(String.join("", words))));
    }

    /** A label of two words, one of which is a number, tells that the other stands beside numbers. */
    private void learn(String label) {
        List<String> words = words(label);
        if (words.size() != 2) {
            return;
        }
        for (int i = 0; i < 2; i++) {
            if (numbers.containsKey(Numbering.key(words.get(i))) && !hasDigit(words.get(1 - i))) {
                beside.add(words.get(1 - i));
            }
        }
    }

    private static boolean hasDigit(String word) {
        return word.chars().anyMatch(Character::isDigit);
    }

    private static List<String> words(String text) {
        return Arrays.asList(LabelKey.of(text).split(" ", -1));
    }
}
