package rushlight.store;

import java.util.Collection;
import java.util.List;
import java.util.OptionalLong;
import rushlight.film.LogId;
import rushlight.film.Prospect;

/**
 * One change of the film, made whole or not at all.
 *
 * @param logs logs to put in place of those of the same evaluator, prospect and game
 * @param gone logs to take out
 * @param prospects what is known of prospects, in place of what was known before
 * @param note what is told of the change
 */
public record Change(Collection<Classified> logs, Collection<LogId> gone, Collection<Prospect> prospects, Note note) {
    /** What kind of change it is. */
    public enum Kind {
        IMPORT,
        EDIT,
        ADD,
        REMOVE,
        UNDO,
        /** Everything of one prospect went, and cannot be brought back. */
        ERASE;

        /** The word that is stored. */
        public String slug() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * What is told of a change.
     *
     * @param kind what kind it is
     * @param said one sentence for people
     * @param undoes the revision it takes back
     * @param by name of the account it was made with; empty where there are no accounts
     */
    public record Note(Kind kind, String said, OptionalLong undoes, String by) {
        /** A change that takes nothing back, made by nobody in particular. */
        public static Note of(Kind kind, String said) {
            return new Note(kind, said, OptionalLong.empty(), "");
        }

        /** The same, made with somebody's account. */
        public Note by(String name) {
            return new Note(kind, said, undoes, name);
        }
    }

    public Change {
        logs = List.copyOf(logs);
        gone = List.copyOf(gone);
        prospects = List.copyOf(prospects);
    }
}
