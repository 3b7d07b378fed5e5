package rushlight.web;

import java.util.List;
import rushlight.ask.SavedQuestion;

/**
 * The questions that are kept under a name.
 *
 * @param questions in the order of their names
 */
public record QuestionsAnswer(List<One> questions) {
    /** One question; {@code saved} says when, in UTC. */
    public record One(String name, String question, String note, String saved) {
        /** The JSON of one. */
        public static One of(SavedQuestion saved) {
            return new One(
                    saved.name(), saved.question(), saved.note(), saved.saved().toString());
        }
    }

    /** The JSON of all. */
    public static QuestionsAnswer of(List<SavedQuestion> all) {
        return new QuestionsAnswer(all.stream().map(One::of).toList());
    }
}
