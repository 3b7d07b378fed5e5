/** What was watched: prospects, games, logs, readings and their steps; the film log as CSV; the closed facts of a rep. */
@NullMarked
package rushlight.film;

import org.jspecify.annotations.NullMarked;
