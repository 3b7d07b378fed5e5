package rushlight.notes;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The characters of a file.
 *
 * @param lines without the mark of byte order; what could not be read is U+FFFD, and so is NUL
 * @param fault what was wrong
 * @param isText whether it is a text at all
 */
record Decoded(List<String> lines, Optional<Diagnostic> fault, boolean isText) {
    private static final char UNKNOWN = '\uFFFD';
    private static final int WEIRD_IN_TEXT = 10;
    private static final int AT_ONCE = 8_192;
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    static Decoded of(byte[] bytes) {
        boolean little = bytes.length > 1 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE;
        boolean big = bytes.length > 1 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF;
        if (little || big) {
            String text = marksAway(tolerant(bytes, little ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE));
            return of(text, new Diagnostic("UTF_16", 1, "The file is UTF-16, not UTF-8. It is read as it is."));
        }
        int from = isMarked(bytes) ? MARK.length : 0;
        Count count = new Count();
        if (!count.strict(bytes, from)) {
            String text = marksAway(tolerant(bytes, StandardCharsets.UTF_8));
            String before = ended(text.substring(0, Math.max(0, text.indexOf(UNKNOWN))));
            return of(
                    text,
                    new Diagnostic(
                            "NOT_UTF_8",
                            1 + (int) before.chars().filter(c -> c == '\n').count(),
                            "The file is not all UTF-8; what could not be read is shown as \uFFFD. Save it as UTF-8."));
        }
        return count.nothings > 0
                ? of(marksAway(tolerant(bytes, StandardCharsets.UTF_8)), null)
                : new Decoded(Lines.of(bytes, from), Optional.empty(), count.isText());
    }

    private static boolean isMarked(byte[] bytes) {
        return bytes.length >= MARK.length && bytes[0] == MARK[0] && bytes[1] == MARK[1] && bytes[2] == MARK[2];
    }

    /** The same text with one line feed at the end of each line, however it was written. */
    private static String ended(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    private static Decoded of(String text, @Nullable Diagnostic fault) {
        Count count = new Count();
        text.chars().forEach(c -> count.see((char) c));
        byte[] read = text.replace('\0', UNKNOWN).getBytes(StandardCharsets.UTF_8);
        return new Decoded(Lines.of(read, 0), Optional.ofNullable(fault), count.isText());
    }

    private static String marksAway(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** What cannot be read becomes U+FFFD. */
    private static String tolerant(byte[] bytes, Charset charset) {
        return new String(bytes, charset);
    }

    /** Counts characters, and those that no text has. */
    private static final class Count {
        private long all;
        private long weird;
        private long nothings;

        void see(char c) {
            all++;
            weird += c == UNKNOWN || (c < ' ' && "\t\n\r\f\u000B".indexOf(c) < 0) ? 1 : 0;
            nothings += c == '\0' ? 1 : 0;
        }

        boolean isText() {
            return weird * WEIRD_IN_TEXT <= all;
        }

        /** Whether the bytes from there on are UTF-8, looked at a little at a time. */
        boolean strict(byte[] bytes, int from) {
            CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
            ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
            CharBuffer out = CharBuffer.allocate(AT_ONCE);
            while (true) {
                CoderResult result = decoder.decode(in, out, true);
                out.flip();
                while (out.hasRemaining()) {
                    see(out.get());
                }
                out.clear();
                if (result.isError()) {
                    return false;
                }
                if (result.isUnderflow()) {
                    return true;
                }
            }
        }
    }
}
