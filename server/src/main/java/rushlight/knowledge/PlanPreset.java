package rushlight.knowledge;

import java.time.DayOfWeek;
import java.util.List;

/**
 * Weeks as a staff usually has them for one man: a start, to be changed.
 *
 * @param slug the preset
 * @param label its name
 * @param seasonPart the part of the year it is for
 * @param weeks how many weeks it runs
 * @param note what it supposes
 * @param days the practice days of each week, in order
 * @param local whether the user's own file added it
 */
public record PlanPreset(
        String slug, String label, String seasonPart, int weeks, String note, List<Day> days, boolean local) {
    /**
     * One practice day of a week.
     *
     * @param weekday the day
     * @param minutes what is free for one man, in minutes
     * @param highest the highest contact allowed
     * @param people how many men are there, the man himself among them
     * @param without slugs of the equipment that is not there
     * @param teamContactMinutes minutes of full contact that the team takes itself
     * @param because why the day is so
     */
    public record Day(
            DayOfWeek weekday,
            int minutes,
            ContactLevel highest,
            int people,
            List<String> without,
            int teamContactMinutes,
            String because) {
        public Day {
            without = List.copyOf(without);
        }
    }

    public PlanPreset {
        days = List.copyOf(days);
    }
}
