/**
 * What a rep is, by the rules of the book. The rule files hold every judgment; this package only lays out the facts they
 * speak of (order, closure, counts, the part of the book a rep touches), runs them in two strata, and tells on request which
 * rule concluded what from which tags.
 */
@NullMarked
package rushlight.rules;

import org.jspecify.annotations.NullMarked;
