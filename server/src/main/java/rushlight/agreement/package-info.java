/**
 * Two evaluators who watched the same games: which of their readings are of one rep, how far they agree, facet by facet and
 * tag by tag, and where they read a rep differently.
 *
 * <p>It begins at {@link rushlight.agreement.Crossing}, which compares logs; what it finds is a
 * {@link rushlight.agreement.CrossCheck}. What a column can be compared by is said by the book ({@code rl:judged} in
 * film.ttl); the coefficients are those of {@code rushlight.evidence.raters}.
 */
@NullMarked
package rushlight.agreement;

import org.jspecify.annotations.NullMarked;
