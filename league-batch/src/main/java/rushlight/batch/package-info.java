/** A whole league assessed on several machines: the verdicts of one machine, bit for bit. */
@NullMarked
package rushlight.batch;

import org.jspecify.annotations.NullMarked;
