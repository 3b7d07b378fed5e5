/** Who may do what: people with their roles, their sessions and tokens, and the record of what was done. */
@NullMarked
package rushlight.accounts;

import org.jspecify.annotations.NullMarked;
