/** An open data folder: store, index, lock and settings together; import, export and catching up. */
@NullMarked
package rushlight.archive;

import org.jspecify.annotations.NullMarked;
