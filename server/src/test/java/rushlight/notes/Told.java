package rushlight.notes;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** A file of notes as the tests look at it: a line for each cue, and the faults. */
record Told(Narration narration) {
    static Told of(String content) {
        return of(content.getBytes(StandardCharsets.UTF_8));
    }

    static Told of(byte[] bytes) {
        return new Told(Narrations.read("notes", bytes));
    }

    List<String> words() {
        return narration.cues().stream().map(Cue::text).toList();
    }

    List<String> ids() {
        return narration.cues().stream().map(Cue::id).toList();
    }

    /** As {@code 0.0-1.5}; a question mark where a time is not known. */
    List<String> times() {
        return narration.cues().stream()
                .map(cue -> time(cue.start()) + "-" + time(cue.end()))
                .toList();
    }

    /** As {@code CODE 3}, the line behind it. */
    List<String> faults() {
        return narration.diagnostics().stream()
                .map(d -> d.code() + " " + d.line())
                .toList();
    }

    private static String time(java.util.OptionalDouble seconds) {
        return seconds.isPresent() ? String.valueOf(seconds.getAsDouble()) : "?";
    }
}
