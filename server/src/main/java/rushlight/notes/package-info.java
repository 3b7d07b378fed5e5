/** Spoken or typed notes with times, read into cues, and into the reps they speak of. */
@NullMarked
package rushlight.notes;

import org.jspecify.annotations.NullMarked;
