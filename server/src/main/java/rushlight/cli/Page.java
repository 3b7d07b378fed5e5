package rushlight.cli;

import java.util.ArrayList;
import java.util.List;

/** Lays sentences out on lines of at most a hundred columns. */
final class Page {
    static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();

    /** A line as it is. */
    Page line(String line) {
        text.append(line.stripTrailing()).append(System.lineSeparator());
        return this;
    }

    /** An empty line. */
    Page blank() {
        return line("");
    }

    /** A sentence broken between words; all lines but the first start with {@code rest}. */
    Page wrapped(String first, String rest, String sentence) {
        lines(first, rest, sentence).forEach(this::line);
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }

    /** Broken between words; a number keeps its percent sign. */
    private static List<String> lines(String first, String rest, String sentence) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : sentence.strip().split("\\s+(?!%)", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(rest);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        lines.add(line.toString());
        return lines;
    }
}
