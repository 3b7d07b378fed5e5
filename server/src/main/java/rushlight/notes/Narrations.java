package rushlight.notes;

import java.nio.ByteBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads files of notes, whatever their format. */
public final class Narrations {
    private static final int SHOWN = 60;

    private Narrations() {}

    /**
     * What stands in a file, as far as it can be read: WebVTT by its signature, SubRip by its first block, else lines with
     * times, else one text without. Never throws; what is wrong is told by line.
     */
    public static Narration read(String source, byte[] bytes) {
        List<Diagnostic> first = new ArrayList<>();
        List<String> lines = lines(text(bytes, first));
        Narration read = VttReader.isSigned(lines)
                ? VttReader.read(source, lines)
                : SrtReader.begins(lines) ? SrtReader.read(source, lines) : PlainReader.read(source, lines);
        if (read.cues().isEmpty()) {
            first.add(new Diagnostic("NO_NOTES", 1, "There are no notes in this file."));
        }
        first.addAll(read.diagnostics());
        return new Narration(source, read.format(), read.cues(), read.text(), first);
    }

    private static String text(byte[] bytes, List<Diagnostic> found) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
        String text;
        try {
            text = decoder.decode(ByteBuffer.wrap(bytes)).toString();
        } catch (java.nio.charset.CharacterCodingException e) {
            throw new IllegalStateException(e);
        }
        String kept = text.startsWith("\uFEFF") ? text.substring(1) : text;
        int bad = kept.indexOf('\uFFFD');
        if (bad >= 0) {
            found.add(new Diagnostic(
                    "NOT_UTF_8",
                    1 + (int) kept.substring(0, bad).lines().count(),
                    "The file is not all UTF-8; what could not be read is shown as \uFFFD. Save it as UTF-8."));
        }
        return kept.replace('\0', '\uFFFD');
    }

    /** Lines end with a line feed, a carriage return or both. */
    private static List<String> lines(String text) {
        return List.of(text.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1));
    }

    static String shortened(String line) {
        return line.length() <= SHOWN ? line : line.substring(0, SHOWN) + "\u2026";
    }
}
