package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A file of notes that is read cue by cue, as often as wanted, so that only its bytes are held: WebVTT by its signature, SubRip
 * by its first block, else lines with times, else whatever has the times of SubRip, else one text without. Never throws; what
 * is wrong is told by line.
 */
public final class NoteFile {
    private final String source;
    private final Decoded decoded;
    private final Format format;
    private final boolean binary;

    private NoteFile(String source, Decoded decoded, Format format, boolean binary) {
        this.source = source;
        this.decoded = decoded;
        this.format = format;
        this.binary = binary;
    }

    /**
     * The notes in some bytes.
     *
     * @param source name of the file
     */
    public static NoteFile of(String source, byte[] bytes) {
        Decoded decoded = Decoded.of(bytes);
        boolean signed = VttReader.isSigned(decoded.lines());
        if (!signed && !decoded.isText()) {
            return new NoteFile(source, decoded, Format.PLAIN, true);
        }
        Format format = signed ? Format.WEBVTT : isSrt(decoded.lines()) ? Format.SRT : Format.PLAIN;
        return new NoteFile(source, decoded, format, false);
    }

    private static boolean isSrt(List<String> lines) {
        // A line of SubRip begins like one of a plain text, with a time.
        return SrtReader.begins(lines)
                || (lines.stream().anyMatch(SrtReader::isTiming)
                        && lines.stream().noneMatch(line -> !SrtReader.isTiming(line) && PlainReader.isTimed(line)));
    }

    /** Name of the file. */
    public String source() {
        return source;
    }

    /** How it is written. */
    public Format format() {
        return format;
    }

    /** Gives every cue in the order of the file; what was wrong comes back. */
    public List<Diagnostic> each(Consumer<Cue> use) {
        if (binary) {
            return List.of(new Diagnostic(
                    "NOT_TEXT", 1, "This is no text (a film or a picture, perhaps); there are no notes in it."));
        }
        CueList cues = new CueList(format == Format.PLAIN, use);
        switch (format) {
            case WEBVTT -> VttReader.read(decoded.lines(), cues);
            case SRT -> SrtReader.read(decoded.lines(), cues);
            case PLAIN -> PlainReader.read(decoded.lines(), cues);
        }
        List<Diagnostic> found = cues.end();
        List<Diagnostic> all = new ArrayList<>();
        decoded.fault().ifPresent(all::add);
        if (cues.isEmpty()) {
            all.add(new Diagnostic("NO_NOTES", 1, "There are no notes in this file."));
        }
        all.addAll(found);
        return List.copyOf(all);
    }

    /** Everything at once. */
    public Narration whole() {
        List<Cue> cues = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        List<Diagnostic> faults = each(cue -> {
            text.append(cues.isEmpty() ? "" : "\n").append(cue.text());
            cues.add(cue);
        });
        return new Narration(source, format, cues, text.toString(), faults);
    }
}
