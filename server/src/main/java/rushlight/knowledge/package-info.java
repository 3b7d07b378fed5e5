/** The technique knowledge: concepts, pairings, fit rules and the film log's columns, read from the ontology files. */
@NullMarked
package rushlight.knowledge;

import org.jspecify.annotations.NullMarked;
