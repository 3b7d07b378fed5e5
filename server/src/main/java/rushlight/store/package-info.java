/** The stored film: TDB2 transactions, revisions, and the triples a log becomes. */
@NullMarked
package rushlight.store;

import org.jspecify.annotations.NullMarked;
