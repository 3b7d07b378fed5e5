package rushlight.notes;

/** Reads files of notes, whatever their format. */
public final class Narrations {
    private static final int SHOWN = 60;

    private Narrations() {}

    /**
     * What stands in a file, as far as it can be read: WebVTT by its signature, SubRip by its first block, else lines with
     * times, else whatever has the times of SubRip, else one text without. Never throws; what is wrong is told by line.
     */
    public static Narration read(String source, byte[] bytes) {
        return NoteFile.of(source, bytes).whole();
    }

    static String shortened(String line) {
        return line.length() <= SHOWN ? line : line.substring(0, SHOWN) + "\u2026";
    }
}
