/** The book as a coach opens it: a page for each concept, what to teach before it, what is right against a block. */
@NullMarked
package rushlight.handbook;

import org.jspecify.annotations.NullMarked;
