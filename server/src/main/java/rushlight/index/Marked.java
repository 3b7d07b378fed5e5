package rushlight.index;

import java.util.List;

/**
 * Plain text with the places that were asked for. It holds no markup: whoever shows it escapes the text and marks the places.
 *
 * @param text as it was written
 * @param marks from the first to the last
 */
public record Marked(String text, List<Span> marks) {
    /**
     * A place in a text, in UTF-16 units.
     *
     * @param from first
     * @param to one after the last
     */
    public record Span(int from, int to) {}

    public Marked {
        marks = List.copyOf(marks);
    }
}
