package rushlight.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks a label into lines, since SVG text does not break by itself. */
final class Wrapping {
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final String ELLIPSIS = "…";

    private Wrapping() {}

    /**
     * Lines of at most {@code width} letters, broken at blanks; a word that is longer is cut into pieces.
     *
     * @param most how many lines; what does not fit is told by an ellipsis
     */
    static List<String> lines(String text, int width, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : BLANKS.splitAsStream(text.strip()).toList()) {
            String rest = word;
            while (rest.length() > width) {
                flush(line, lines);
                int cut = Character.isHighSurrogate(rest.charAt(width - 1)) ? width - 1 : width;
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
                flush(line, lines);
            }
            line.append(line.length() == 0 ? "" : " ").append(rest);
        }
        flush(line, lines);
        if (lines.size() <= most) {
            return List.copyOf(lines);
        }
        String last = lines.get(most - 1);
        String shortened =
                last.length() < width ? last : last.substring(0, width - 1).stripTrailing();
        List<String> kept = new ArrayList<>(lines.subList(0, most - 1));
        kept.add(shortened + ELLIPSIS);
        return List.copyOf(kept);
    }

    private static void flush(StringBuilder line, List<String> lines) {
        if (line.length() > 0) {
            lines.add(line.toString());
            line.setLength(0);
        }
    }
}
