package rushlight.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Writes one SVG element: escapes what it is given, closes what it opened, and writes a number the same way everywhere. */
final class Svg {
    /** Where a text stands to its point. */
    enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }
    }

    private static final double LETTER = 0.56;

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    Svg(String kind, Heading heading, double width, double height) {
        start(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "figure figure-" + kind,
                "viewBox",
                "0 0 " + number(width) + " " + number(height),
                "role",
                "img",
                "aria-labelledby",
                heading.id() + "-title",
                "aria-describedby",
                heading.id() + "-desc",
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                "1.5");
        start("title", "id", heading.id() + "-title").words(heading.title()).end();
        start("desc", "id", heading.id() + "-desc").words(heading.description()).end();
    }

    /** Opens an element; attributes come as name, value, name, value. */
    Svg start(String name, String... attributes) {
        out.append('<').append(name);
        attributes(attributes);
        out.append('>');
        open.push(name);
        return this;
    }

    /** Closes the element opened last. */
    Svg end() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** An element with nothing in it. */
    Svg empty(String name, String... attributes) {
        out.append('<').append(name);
        attributes(attributes);
        out.append("/>");
        return this;
    }

    Svg line(double x1, double y1, double x2, double y2, String classes) {
        return empty("line", "class", classes, "x1", number(x1), "y1", number(y1), "x2", number(x2), "y2", number(y2));
    }

    /** A line of text; the page's own font, in the page's own ink. */
    Svg text(double x, double y, double size, Anchor anchor, String classes, String content) {
        start(
                "text",
                "class",
                classes,
                "x",
                number(x),
                "y",
                number(y),
                "font-size",
                number(size),
                "text-anchor",
                anchor.word,
                "fill",
                "currentColor",
                "stroke",
                "none");
        return words(content).end();
    }

    /** Several lines of text, the first at {@code y}. */
    Svg lines(double x, double y, double size, Anchor anchor, String classes, List<String> lines) {
        double at = y;
        for (String line : lines) {
            text(x, at, size, anchor, classes, line);
            at += size * 1.2;
        }
        return this;
    }

    /** The whole, once everything is closed. */
    String finish() {
        while (!open.isEmpty()) {
            end();
        }
        return out.toString();
    }

    /** At most two decimals, never an exponent, never a bare minus zero. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** How many letters of a size fit beside each other in a width, by the width of a usual letter. */
    static int letters(double width, double size) {
        return Math.max(4, (int) (width / (size * LETTER)));
    }

    private Svg words(String content) {
        content.codePoints().forEach(this::escaped);
        return this;
    }

    private void attributes(String... attributes) {
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            words(attributes[i + 1]);
            out.append('"');
        }
    }

    private void escaped(int c) {
        switch (c) {
            case '&' -> out.append("&amp;");
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '"' -> out.append("&quot;");
            case '\'' -> out.append("&#39;");
            case '\t', '\n', '\r' -> out.append(' ');
            default -> {
                if (c >= 0x20 && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF)) {
                    out.appendCodePoint(c);
                }
            }
        }
    }
}
