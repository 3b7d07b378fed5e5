/** Questions: what a person asked, how it was read, and what answers it. */
@NullMarked
package rushlight.ask;

import org.jspecify.annotations.NullMarked;
