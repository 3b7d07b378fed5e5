package rushlight.words;

/**
 * A word or a mark of a text.
 *
 * @param text as it stands there
 * @param key the form that is compared: lower case, no accents, numbers as digits
 * @param from where it begins, in UTF-16 units
 * @param to where it ends; the parts of a word that was taken apart share its place where they have none of their own
 * @param word whether it is a word or a number, and no mark
 * @param repaired whether the key is a guess at a misspelled word
 */
public record Token(String text, String key, int from, int to, boolean word, boolean repaired) {
    /** Whether it is a whole number that fits an {@code int}. */
    public boolean isNumber() {
        return word && !key.isEmpty() && key.length() < 10 && key.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    /** The number it is. */
    public int number() {
        return Integer.parseInt(key);
    }

    /** The same place, taken for another word. */
    public Token takenFor(String otherKey) {
        return new Token(text, otherKey, from, to, word, true);
    }
}
