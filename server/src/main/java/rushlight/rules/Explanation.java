package rushlight.rules;

import java.util.List;

/**
 * Why a rep belongs to a class.
 *
 * @param repClass the class
 * @param rule name of the rule that concluded it
 * @param sentence what that rule says, for people
 * @param through sentences of the rules it built on, from the nearest down
 * @param tags what was charted and made it fire
 * @param book pairings and fit rules of the book it used
 * @param hangsOn what those fit rules hang on, in words; it changes no class
 */
public record Explanation(
        String repClass,
        String rule,
        String sentence,
        List<String> through,
        List<Tag> tags,
        List<String> book,
        List<String> hangsOn) {
    /**
     * One thing that was charted.
     *
     * @param column the column
     * @param value its value; a step of the blocker's stands in brackets; empty where the column is blank
     */
    public record Tag(String column, String value) {}

    public Explanation {
        through = List.copyOf(through);
        tags = List.copyOf(tags);
        book = List.copyOf(book);
        hangsOn = List.copyOf(hangsOn);
    }
}
