package rushlight.film.csv;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The rows of a CSV file one after the other, with the line each starts on. Rows of blank cells are passed over. */
final class CsvRows implements AutoCloseable {
    /**
     * One row.
     *
     * @param line line of the file it starts on, from 1
     * @param cells what stands in its cells, the guard against formulas taken away
     */
    record Row(int line, List<String> cells) {}

    private static final int SIGNATURE = 4;

    private final MessageDigest digest;
    private final Utf8Text text;
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;

    private CsvRows(MessageDigest digest, Utf8Text text, CSVParser parser) {
        this.digest = digest;
        this.text = text;
        this.parser = parser;
        this.records = parser.iterator();
    }

    /** Starts to read; the rows own the stream from here on. */
    static CsvRows open(String file, InputStream in) throws IOException {
        MessageDigest digest = sha256();
        BufferedInputStream bytes = new BufferedInputStream(new DigestInputStream(in, digest));
        refuseOtherFormats(file, bytes);
        Utf8Text text = new Utf8Text(bytes);
        return new CsvRows(
                digest,
                text,
                CSVParser.builder().setReader(text).setFormat(CSVFormat.RFC4180).get());
    }

    /** The next row; empty at the end of the file. */
    Optional<Row> next() throws IOException {
        while (true) {
            int line = (int) parser.getCurrentLineNumber() + 1;
            text.rowStarts(line);
            try {
                if (!records.hasNext()) {
                    return Optional.empty();
                }
                String[] cells = records.next().values();
                if (!isBlank(cells)) {
                    for (int i = 0; i < cells.length; i++) {
                        cells[i] = SafeCell.read(cells[i]);
                    }
                    return Optional.of(new Row(line, List.of(cells)));
                }
            } catch (UncheckedIOException e) {
                throw unreadable(e, line);
            }
        }
    }

    /** SHA-256 of all bytes of the file; call it after the last row. */
    String sha256OfFile() {
        return HexFormat.of().formatHex(digest.digest());
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }

    private static IOException unreadable(UncheckedIOException e, int line) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof UnreadableTextException unreadable) {
                return unreadable;
            }
        }
        return e.getCause() instanceof CSVException
                ? new UnreadableTextException(Utf8Text.quoteNotClosed(line))
                : new IOException(e.getMessage(), e);
    }

    private static boolean isBlank(String[] cells) {
        for (String cell : cells) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return true;
    }

    private static void refuseOtherFormats(String file, BufferedInputStream bytes) throws IOException {
        bytes.mark(SIGNATURE);
        byte[] first = bytes.readNBytes(SIGNATURE);
        bytes.reset();
        List<Integer> start = List.of(at(first, 0), at(first, 1));
        if (first.length == SIGNATURE && Arrays.equals(first, new byte[] {'P', 'K', 3, 4})) {
            throw new UnreadableTextException(Fault.ofFile(
                    Fault.Code.NOT_CSV,
                    file + " is a spreadsheet or a packed file, not CSV; save the sheet as \"CSV UTF-8\"."));
        }
        if (start.equals(List.of(0xFF, 0xFE)) || start.equals(List.of(0xFE, 0xFF))) {
            throw new UnreadableTextException(Fault.ofFile(
                    Fault.Code.NOT_UTF_8, file + " is written in UTF-16, not UTF-8; save it as \"CSV UTF-8\"."));
        }
    }

    private static int at(byte[] bytes, int index) {
        return index < bytes.length ? bytes[index] & 0xFF : -1;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
