package rushlight.notes;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The characters of a file.
 *
 * @param text without the mark of byte order; what could not be read is U+FFFD, and so is NUL
 * @param fault what was wrong
 * @param isText whether it is a text at all
 */
record Decoded(String text, Optional<Diagnostic> fault, boolean isText) {
    private static final char UNKNOWN = '\uFFFD';
    private static final int WEIRD_IN_TEXT = 10;

    static Decoded of(byte[] bytes) {
        boolean little = bytes.length > 1 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE;
        boolean big = bytes.length > 1 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF;
        if (little || big) {
            String text = marksAway(tolerant(bytes, little ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE));
            return of(text, new Diagnostic("UTF_16", 1, "The file is UTF-16, not UTF-8. It is read as it is."));
        }
        String strict = strict(bytes);
        if (strict != null) {
            return of(marksAway(strict), null);
        }
        String text = marksAway(tolerant(bytes, StandardCharsets.UTF_8));
        String before = lines(text.substring(0, Math.max(0, text.indexOf(UNKNOWN))));
        return of(
                text,
                new Diagnostic(
                        "NOT_UTF_8",
                        1 + (int) before.chars().filter(c -> c == '\n').count(),
                        "The file is not all UTF-8; what could not be read is shown as \uFFFD. Save it as UTF-8."));
    }

    /** The same text with one line feed at the end of each line, however it was written. */
    static String lines(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    private static Decoded of(String text, @Nullable Diagnostic fault) {
        long weird = text.chars()
                .filter(c -> c == UNKNOWN || (c < ' ' && "\t\n\r\f\u000B".indexOf(c) < 0))
                .count();
        return new Decoded(
                text.replace('\0', UNKNOWN), Optional.ofNullable(fault), weird * WEIRD_IN_TEXT <= text.length());
    }

    private static String marksAway(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static @Nullable String strict(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return null;
        }
    }

    /** What cannot be read becomes U+FFFD. */
    private static String tolerant(byte[] bytes, Charset charset) {
        return new String(bytes, charset);
    }
}
