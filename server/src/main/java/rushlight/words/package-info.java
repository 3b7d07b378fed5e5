/** Finds the concept a person means by a label: spelling apart, within what a place allows, with the nearest when there is none. */
@NullMarked
package rushlight.words;

import org.jspecify.annotations.NullMarked;
