package rushlight.plan;

import java.util.Set;

/**
 * What can fill a part of a session: one set of a drill, or a check.
 *
 * @param slug the drill or the check
 * @param skill the skill it is for
 * @param rank rank of its contact level
 * @param minutes what it takes, above 0
 * @param people how many men it takes, the man himself among them
 * @param equipment slugs of what it cannot be run without
 * @param mostSets how often it may come in the block
 * @param check whether it shows where a skill stands, and trains nothing
 */
public record Exercise(
        String slug,
        String skill,
        int rank,
        int minutes,
        int people,
        Set<String> equipment,
        int mostSets,
        boolean check) {
    public Exercise {
        equipment = Set.copyOf(equipment);
    }
}
