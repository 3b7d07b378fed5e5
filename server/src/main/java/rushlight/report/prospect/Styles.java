package rushlight.report.prospect;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheet of a report, with its paper and what stands at the foot of its pages. */
final class Styles {
    private static final String FILE = "/rushlight/report/report.css";

    private Styles() {}

    static String of(Paper paper, String name) {
        return text(FILE).replace("PAPER-SIZE", paper.size()).replace("PROSPECT-NAME", quoted(name));
    }

    /** A name as a CSS string may hold it, in a style element of XHTML: anything but letters and digits is escaped. */
    private static String quoted(String name) {
        StringBuilder out = new StringBuilder();
        name.codePoints().forEach(c -> {
            if (Character.isLetterOrDigit(c) || c == ' ') {
                out.appendCodePoint(c);
            } else {
                out.append('\\').append(String.format("%06x", c));
            }
        });
        return out.toString();
    }

    static String text(String file) {
        try (InputStream in = Styles.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + file + ".");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
