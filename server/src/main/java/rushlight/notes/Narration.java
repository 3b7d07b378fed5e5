package rushlight.notes;

import java.util.List;

/**
 * A file of notes, read.
 *
 * @param source name of the file
 * @param format how it is written
 * @param cues in the order of the file
 * @param text the words of all cues, one line break between two
 * @param diagnostics what was wrong in the file
 */
public record Narration(String source, Format format, List<Cue> cues, String text, List<Diagnostic> diagnostics) {
    public Narration {
        cues = List.copyOf(cues);
        diagnostics = List.copyOf(diagnostics);
    }

    /** The words between two places of the file; of a stretch of it, they lie in the stretch. */
    String words(int from, int to) {
        int begins = cues.isEmpty() ? 0 : cues.get(0).from();
        return text.substring(from - begins, to - begins);
    }
}
