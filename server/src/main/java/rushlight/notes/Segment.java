package rushlight.notes;

import java.util.Locale;

/**
 * A stretch of the notes.
 *
 * @param kind what it is about
 * @param rep the ordinal of its rep, from 1; 0 where it belongs to none
 * @param from where it begins in the text
 * @param to where it ends
 */
public record Segment(Kind kind, int rep, int from, int to) {
    /** What a stretch is about. */
    public enum Kind {
        REP,
        /** The same rep, looked at again. */
        REPLAY,
        /** The player in general. */
        SUMMARY,
        CHATTER;

        /** The word in files and in JSON. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
