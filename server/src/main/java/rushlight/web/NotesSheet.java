package rushlight.web;

import java.util.List;
import java.util.OptionalDouble;
import rushlight.archive.NotesDecisions;
import rushlight.notes.Decisions;
import rushlight.notes.Narration;
import rushlight.notes.Notes;

/**
 * Notes with the words they were read from, for a page that shows both.
 *
 * @param notes what they say
 * @param format how the file is written: {@code webvtt}, {@code srt} or {@code plain}
 * @param text the words of all cues, one line break between two
 * @param cues where each stands in the text, and when it was said
 * @param kept what was decided on them
 */
public record NotesSheet(NotesAnswer notes, String format, String text, List<Cue> cues, Kept kept) {
    /** One stretch of the recording; times in seconds. */
    public record Cue(OptionalDouble start, OptionalDouble end, String voice, int from, int to) {}

    /**
     * Decisions as they hold for this reading.
     *
     * @param id where they are kept
     * @param version by which they are changed; 0 where nothing is kept yet
     * @param when when they were kept, UTC; empty where nothing is
     * @param others files of the same name that have decisions of their own
     */
    public record Kept(String id, long version, String when, int others, Decisions decided) {}

    /** The sheet of this file. */
    public static NotesSheet of(Narration narration, Notes notes, NotesDecisions.Found found) {
        return new NotesSheet(
                NotesAnswer.of(notes),
                narration.format().name().toLowerCase(java.util.Locale.ROOT),
                narration.text(),
                narration.cues().stream()
                        .map(cue -> new Cue(cue.start(), cue.end(), cue.voice(), cue.from(), cue.to()))
                        .toList(),
                new Kept(
                        found.id(),
                        found.version(),
                        found.version() == 0 ? "" : found.when().toString(),
                        found.others(),
                        found.decided()));
    }
}
