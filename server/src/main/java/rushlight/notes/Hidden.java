package rushlight.notes;

/**
 * Words that name a concept and were not made a tag of.
 *
 * @param concept its slug
 * @param text the words
 * @param from where they begin
 * @param to where they end
 * @param why the reason
 */
public record Hidden(String concept, String text, int from, int to, String why) {}
