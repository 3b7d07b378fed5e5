package rushlight.ask;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A part of a question and what it was taken for. Whoever takes {@code [from, to)} out of the question, or puts the words
 * of a choice in its place, and asks again, has edited the reading.
 *
 * @param role what part it plays
 * @param label what it was taken for, for people
 * @param text the words as they stand in the question
 * @param from where they begin, in UTF-16 units
 * @param to where they end
 * @param concept the concept, where it is one
 * @param guessed whether the spelling was repaired
 * @param choices what else it could be
 */
public record Chip(
        Role role,
        String label,
        String text,
        int from,
        int to,
        Optional<String> concept,
        boolean guessed,
        List<Choice> choices) {
    /** What part of a question plays. */
    public enum Role {
        FIND,
        FACED,
        DID,
        DID_NOT,
        RESULT,
        FAULT,
        ALIGNMENT,
        DUTY,
        BLOCKER,
        SIDE,
        PLAY,
        PHASE,
        CONTEXT,
        FINDING,
        POLARITY,
        SEVERITY,
        VERDICT,
        QUANTITY,
        ORDER,
        PROSPECT,
        GAME,
        OPPONENT,
        TEAM,
        CLASS_YEAR,
        LEVEL,
        TOPIC,
        NOTE,
        COMPARED,
        NOT;

        /** The word as it is written in answers, such as {@code did-not}. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * Another meaning.
     *
     * @param label what it is, for people
     * @param words what to write in the question instead
     */
    public record Choice(String label, String words) {}

    public Chip {
        choices = List.copyOf(choices);
    }
}
