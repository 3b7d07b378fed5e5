/** Tests of the knowledge files: they parse, conform, stay inside OWL 2 EL and answer the questions they were written for. */
@NullMarked
package rushlight.ontology;

import org.jspecify.annotations.NullMarked;
