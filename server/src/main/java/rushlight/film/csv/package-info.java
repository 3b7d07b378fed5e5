/** The film log and the list of prospects as CSV: every fault of a file told at once with its line, and what is written reads back the same. */
@NullMarked
package rushlight.film.csv;

import org.jspecify.annotations.NullMarked;
