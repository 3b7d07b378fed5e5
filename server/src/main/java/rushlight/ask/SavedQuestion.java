package rushlight.ask;

import java.time.Instant;

/**
 * A question that is kept under a name, to be asked again of newer film.
 *
 * @param name what it goes by; two names that differ in capitals and hyphens alone are one
 * @param question as it was asked
 * @param note what it is for, may be empty
 * @param saved when it was kept
 */
public record SavedQuestion(String name, String question, String note, Instant saved) {}
