package rushlight.web;

import rushlight.ask.SavedQuestion;

/**
 * A saved question.
 *
 * @param saved when, UTC
 */
public record QuestionAnswer(String name, String question, String note, String saved) {
    /** One question of the folder. */
    public static QuestionAnswer of(SavedQuestion question) {
        return new QuestionAnswer(
                question.name(),
                question.question(),
                question.note(),
                question.saved().toString());
    }
}
