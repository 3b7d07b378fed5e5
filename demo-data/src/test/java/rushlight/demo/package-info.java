/** The invented league: who plays in it, and the seeded generator that writes most of its film logs. */
@NullMarked
package rushlight.demo;

import org.jspecify.annotations.NullMarked;
