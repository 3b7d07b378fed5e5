/** The JSON that people and programs read; the command line prints through the same mapping. */
@NullMarked
package rushlight.web;

import org.jspecify.annotations.NullMarked;
