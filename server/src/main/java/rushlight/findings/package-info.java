/**
 * What film says about a player: measures held against their lines, the words they have earned, and what follows from
 * several of them together.
 *
 * <p>{@link rushlight.findings.FindingBook} reads the findings of the book. {@link rushlight.findings.Assessor} counts them
 * on a {@link rushlight.situation.Tape} and gives an {@link rushlight.findings.Assessment}: one
 * {@link rushlight.findings.Judged} a finding, with the counts, the interval, the word and the reps behind it.
 */
@NullMarked
package rushlight.findings;

import org.jspecify.annotations.NullMarked;
