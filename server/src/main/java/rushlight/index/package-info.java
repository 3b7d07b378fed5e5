/** The film in a form that is counted in milliseconds: a Lucene index of every reading with its facts. */
@NullMarked
package rushlight.index;

import org.jspecify.annotations.NullMarked;
