package rushlight.plan;

import java.util.Set;

/**
 * One skill to be worked on.
 *
 * @param skill the skill
 * @param weight what one set of it is worth, 0 or more
 * @param first slugs of the skills that come before it and are not there yet
 * @param fewest the fewest sets in the block
 * @param most the most sets in the block
 * @param gap whether film showed it as a gap: it is checked at the end
 * @param safety whether it is a matter of safety: it opens the block, and there is no full contact before its check
 */
public record Focus(String skill, int weight, Set<String> first, int fewest, int most, boolean gap, boolean safety) {
    public Focus {
        first = Set.copyOf(first);
    }
}
