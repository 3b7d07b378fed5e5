/** The command line: thin commands, and the only place that prints. */
@NullMarked
package rushlight.cli;

import org.jspecify.annotations.NullMarked;
