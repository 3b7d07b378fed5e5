/** What a rep may be like: one small language, read from and written as SHACL, tested on the facts of a rep. */
@NullMarked
package rushlight.situation;

import org.jspecify.annotations.NullMarked;
