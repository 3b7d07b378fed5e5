package rushlight.web;

import java.util.List;
import java.util.OptionalDouble;
import rushlight.notes.Narration;
import rushlight.notes.Notes;

/**
 * Notes with the words they were read from, for a page that shows both.
 *
 * @param notes what they say
 * @param format how the file is written: {@code webvtt}, {@code srt} or {@code plain}
 * @param text the words of all cues, one line break between two
 * @param cues where each stands in the text, and when it was said
 */
public record NotesSheet(NotesAnswer notes, String format, String text, List<Cue> cues) {
    /** One stretch of the recording; times in seconds. */
    public record Cue(OptionalDouble start, OptionalDouble end, String voice, int from, int to) {}

    /** The sheet of this file. */
    public static NotesSheet of(Narration narration, Notes notes) {
        return new NotesSheet(
                NotesAnswer.of(notes),
                narration.format().name().toLowerCase(java.util.Locale.ROOT),
                narration.text(),
                narration.cues().stream()
                        .map(cue -> new Cue(cue.start(), cue.end(), cue.voice(), cue.from(), cue.to()))
                        .toList());
    }
}
