/**
 * Statistics on small counts: rates with their intervals, comparisons of two rates, and the words a count has earned.
 *
 * <p>One object carries everything: {@link rushlight.evidence.Rate}, x events in n opportunities. Under the Jeffreys prior
 * Beta(1/2, 1/2) its posterior is Beta(x + 1/2, n - x + 1/2); the interval a person sees, the probability of being past a
 * {@link rushlight.evidence.Line} and the {@link rushlight.evidence.Verdict} all read from it, so they cannot contradict
 * each other. Nothing here knows what the events are.
 */
@NullMarked
package rushlight.evidence;

import org.jspecify.annotations.NullMarked;
