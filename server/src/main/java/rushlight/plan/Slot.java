package rushlight.plan;

import java.util.Set;

/**
 * One practice session that is free for one man.
 *
 * @param label how it is called, such as {@code week 1 Monday}
 * @param week its week, from 1
 * @param day its day in the block, from 0; days that follow each other differ by 1
 * @param minutes what is free, 0 or more
 * @param highest rank of the highest contact allowed
 * @param people how many men are there, the man himself among them
 * @param without slugs of the equipment that is not there
 * @param teamContactMinutes minutes of full contact that the team takes on that day by itself
 */
public record Slot(
        String label,
        int week,
        int day,
        int minutes,
        int highest,
        int people,
        Set<String> without,
        int teamContactMinutes) {
    public Slot {
        without = Set.copyOf(without);
    }
}
