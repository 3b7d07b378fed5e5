package rushlight.notes;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Words that belong to one stretch of the recording.
 *
 * @param number its place in the file, from 1
 * @param id its name in the file; empty where it has none
 * @param start seconds from the beginning of the recording; empty where no time is given
 * @param end seconds; empty where it is not known
 * @param voices who speaks from where on, in the order of the words; empty where nobody is named
 * @param text the words, without marks of the format
 * @param from where they begin in the text of the whole file, in UTF-16 units
 */
public record Cue(
        int number, String id, OptionalDouble start, OptionalDouble end, List<Voice> voices, String text, int from) {
    /**
     * Somebody begins to speak.
     *
     * @param name who
     * @param from where, in UTF-16 units of the words of the cue
     */
    public record Voice(String name, int from) {}

    public Cue {
        voices = List.copyOf(voices);
    }

    /** Who speaks first; empty where nobody is named. */
    public String voice() {
        return voices.isEmpty() ? "" : voices.get(0).name();
    }

    /** Where the words end in the text of the whole file. */
    public int to() {
        return from + text.length();
    }
}
