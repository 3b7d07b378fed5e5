package rushlight.web;

import java.util.Optional;

/**
 * What was done.
 *
 * @param revision number of the change
 * @param said one sentence for people
 * @param undo whether it can be taken back by its number
 * @param reading the reading as it is now
 */
public record ChangeAnswer(long revision, String said, boolean undo, Optional<ReadingAnswer> reading) {}
