package rushlight.knowledge;

import java.util.List;

/**
 * A skill that drills are chosen for.
 *
 * @param slug the skill
 * @param label its name
 * @param kind {@code trait}, {@code technique}, {@code perceptual} or {@code tactical}
 * @param judgedAt the lightest contact at which it can honestly be judged
 * @param trainability how much of it moves in one block of four to eight weeks, above 0 and up to 1; a judgment of the house
 * @param measuredBy what is counted to see how it stands
 * @param shownBy slugs of the findings whose count is what film shows of it
 * @param layer the longest way to it from a skill that needs none first, in links; 0 for such a skill
 * @param local whether the user's own file added it
 */
public record TrainedSkill(
        String slug,
        String label,
        String kind,
        ContactLevel judgedAt,
        double trainability,
        String measuredBy,
        List<String> shownBy,
        int layer,
        boolean local) {
    public TrainedSkill {
        shownBy = List.copyOf(shownBy);
    }
}
