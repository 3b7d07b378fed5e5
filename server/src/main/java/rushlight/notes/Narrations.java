package rushlight.notes;

import java.util.ArrayList;
import java.util.List;

/** Reads files of notes, whatever their format. */
public final class Narrations {
    private static final int SHOWN = 60;

    private Narrations() {}

    /**
     * What stands in a file, as far as it can be read: WebVTT by its signature, SubRip by its first block, else lines with
     * times, else whatever has the times of SubRip, else one text without. Never throws; what is wrong is told by line.
     */
    public static Narration read(String source, byte[] bytes) {
        Decoded decoded = Decoded.of(bytes);
        List<String> lines = List.of(Decoded.lines(decoded.text()).split("\n", -1));
        boolean signed = VttReader.isSigned(lines);
        if (!signed && !decoded.isText()) {
            Diagnostic binary = new Diagnostic(
                    "NOT_TEXT", 1, "This is no text (a film or a picture, perhaps); there are no notes in it.");
            return new Narration(source, Format.PLAIN, List.of(), "", List.of(binary));
        }
        Narration read = signed
                ? VttReader.read(source, lines)
                : isSrt(lines) ? SrtReader.read(source, lines) : PlainReader.read(source, lines);
        List<Diagnostic> all = new ArrayList<>();
        decoded.fault().ifPresent(all::add);
        if (read.cues().isEmpty()) {
            all.add(new Diagnostic("NO_NOTES", 1, "There are no notes in this file."));
        }
        all.addAll(read.diagnostics());
        return new Narration(source, read.format(), read.cues(), read.text(), all);
    }

    private static boolean isSrt(List<String> lines) {
        // A line of SubRip begins like one of a plain text, with a time.
        return SrtReader.begins(lines)
                || (lines.stream().anyMatch(SrtReader::isTiming)
                        && lines.stream().noneMatch(line -> !SrtReader.isTiming(line) && PlainReader.isTimed(line)));
    }

    static String shortened(String line) {
        return line.length() <= SHOWN ? line : line.substring(0, SHOWN) + "\u2026";
    }
}
