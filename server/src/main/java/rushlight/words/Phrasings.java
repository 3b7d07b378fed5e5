package rushlight.words;

import java.util.ArrayList;
import java.util.List;

/** The ways to say a pattern of a word list: {@code (can|should) he (now|) do} stands for four. */
public final class Phrasings {
    private Phrasings() {}

    /**
     * Every way, in the order written; a pattern without brackets is its only one.
     *
     * @throws IllegalArgumentException where a bracket is not closed
     */
    public static List<String> of(String pattern) {
        int open = pattern.indexOf('(');
        if (open < 0) {
            return List.of(pattern.strip().replaceAll(" +", " "));
        }
        int close = pattern.indexOf(')', open);
        if (close < 0) {
            throw new IllegalArgumentException("The bracket of \"" + pattern + "\" is not closed.");
        }
        List<String> all = new ArrayList<>();
        for (String choice : pattern.substring(open + 1, close).split("\\|", -1)) {
            all.addAll(of(pattern.substring(0, open) + choice + pattern.substring(close + 1)));
        }
        return all;
    }
}
