package rushlight.film.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The characters of a UTF-8 file, strictly: a byte that is no UTF-8 is told with its line, and no row may be so long that
 * it fills the memory. A byte order mark at the start is passed over.
 */
final class Utf8Text extends Reader {
    static final int LONGEST_ROW = 1_000_000;

    private static final int BUFFER = 8192;
    private static final int NO_BYTE = -1;

    private final InputStream in;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    private final ByteBuffer bytes = ByteBuffer.allocate(BUFFER).flip();
    private final CharBuffer chars = CharBuffer.allocate(BUFFER).flip();
    private final AtomicBoolean started = new AtomicBoolean();
    private final AtomicBoolean ended = new AtomicBoolean();
    private final AtomicInteger strangeByte = new AtomicInteger(NO_BYTE);
    private final AtomicInteger line = new AtomicInteger(1);
    private final AtomicInteger inLine = new AtomicInteger();
    private final AtomicInteger rowLine = new AtomicInteger(1);
    private final AtomicInteger inRow = new AtomicInteger();

    Utf8Text(InputStream in) {
        this.in = in;
    }

    /** Tells that all rows before {@code line} were taken. */
    void rowStarts(int newLine) {
        rowLine.set(newLine);
        inRow.set(0);
    }

    @Override
    public int read(char[] out, int from, int length) throws IOException {
        while (!chars.hasRemaining()) {
            if (strangeByte.get() != NO_BYTE) {
                throw new UnreadableTextException(notUtf8());
            }
            if (ended.get()) {
                return -1;
            }
            fill();
        }
        int count = Math.min(length, chars.remaining());
        chars.get(out, from, count);
        count(out, from, count);
        return count;
    }

    private void fill() throws IOException {
        bytes.compact();
        int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
        ended.set(read < 0);
        bytes.position(bytes.position() + Math.max(read, 0)).flip();
        chars.clear();
        CoderResult result = decoder.decode(bytes, chars, ended.get());
        if (result.isError()) {
            strangeByte.set(bytes.get(bytes.position()) & 0xFF);
        }
        chars.flip();
        if (chars.hasRemaining() && !started.getAndSet(true) && chars.get(chars.position()) == '\uFEFF') {
            chars.get();
        }
    }

    private void count(char[] out, int from, int count) throws UnreadableTextException {
        int lines = line.get();
        int run = inLine.get();
        for (int i = from; i < from + count; i++) {
            run++;
            if (out[i] == '\n') {
                lines++;
                run = 0;
            }
        }
        line.set(lines);
        inLine.set(run);
        if (run > LONGEST_ROW) {
            throw new UnreadableTextException(new Fault(
                    lines,
                    "",
                    "",
                    Fault.Code.LINE_TOO_LONG,
                    "this line is longer than 1,000,000 characters; a row of a film log has a few hundred.",
                    List.of()));
        }
        if (inRow.addAndGet(count) > LONGEST_ROW + BUFFER) {
            throw new UnreadableTextException(quoteNotClosed(rowLine.get()));
        }
    }

    static Fault quoteNotClosed(int line) {
        return new Fault(
                line,
                "",
                "",
                Fault.Code.QUOTE_NOT_CLOSED,
                "a quote in this row is not closed where its cell ends;"
                        + " close it, and write a quote that belongs to the text twice (\"\").",
                List.of());
    }

    private Fault notUtf8() {
        return new Fault(
                line.get(),
                "",
                "",
                Fault.Code.NOT_UTF_8,
                "the byte 0x" + Integer.toHexString(strangeByte.get()).toUpperCase(Locale.ROOT)
                        + " is not UTF-8; save the file as \"CSV UTF-8\".",
                List.of());
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
