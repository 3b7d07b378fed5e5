package rushlight.film.csv;

import java.util.List;

/** How lists and offers read in a sentence. */
final class Sentences {
    private Sentences() {}

    /** {@code a, b or c}. */
    static String or(List<String> words) {
        return joined(words, " or ");
    }

    /** {@code a, b and c}. */
    static String and(List<String> words) {
        return joined(words, " and ");
    }

    /** The end of a sentence about an unknown value: what may have been meant. */
    static String didYouMean(List<String> nearest) {
        return nearest.isEmpty() ? "." : "; did you mean " + or(nearest) + "?";
    }

    private static String joined(List<String> words, String last) {
        int size = words.size();
        return size < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, size - 1)) + last + words.get(size - 1);
    }
}
