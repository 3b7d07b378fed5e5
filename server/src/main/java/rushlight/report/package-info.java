/** What the others found, written for readers who have no program: the book as a folder. */
@NullMarked
package rushlight.report;

import org.jspecify.annotations.NullMarked;
