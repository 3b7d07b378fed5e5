package rushlight.plan;

import java.util.List;

/**
 * The numbers a schedule keeps to.
 *
 * @param contactRank the lightest rank that counts as full contact; the rank below it is the last step of the ladder before it
 * @param approvedRank the highest rank that those who must approve have approved
 * @param contactMinutesADay full contact of team and plan in a day, in minutes
 * @param contactMinutesAWeek full contact of team and plan in a week, in minutes
 * @param ownContactMinutesAWeek full contact of the plan alone in a week, in minutes
 * @param foci skills in a session
 * @param newFoci skills begun in a session, for each week; the last number holds for the weeks after it
 * @param sessionsAWeek sessions of one skill in a week
 * @param inThreeSessions sessions of one skill among three that follow each other
 * @param lighterSets lighter sets of the skill before the first one rank below full contact
 * @param lighterSetsForSafety the same for a matter of safety
 * @param controlSets sets one rank below full contact before the first at full contact
 * @param firstSets sets of each skill that comes before, before the first one rank below full contact
 * @param firstSetsForContact the same before the first at full contact
 * @param daysAWeek days with a session of the plan in a week
 * @param minutesAWeek minutes of the plan in a week
 */
public record PlanLimits(
        int contactRank,
        int approvedRank,
        int contactMinutesADay,
        int contactMinutesAWeek,
        int ownContactMinutesAWeek,
        int foci,
        List<Integer> newFoci,
        int sessionsAWeek,
        int inThreeSessions,
        int lighterSets,
        int lighterSetsForSafety,
        int controlSets,
        int firstSets,
        int firstSetsForContact,
        int daysAWeek,
        int minutesAWeek) {
    public PlanLimits {
        newFoci = List.copyOf(newFoci);
        if (newFoci.isEmpty()) {
            throw new IllegalArgumentException("newFoci must have a number for the first week");
        }
    }

    /** How many skills may be begun in a session of a week, from 1. */
    public int newFociIn(int week) {
        return newFoci.get(Math.min(week, newFoci.size()) - 1);
    }

    /** Whether a rank is one below full contact. */
    boolean isControl(int rank) {
        return rank == contactRank - 1;
    }

    boolean isContact(int rank) {
        return rank >= contactRank;
    }

    /** Lighter sets that a skill must have had before its first set one rank below full contact. */
    int lighterSetsOf(Focus focus) {
        return focus.safety() ? lighterSetsForSafety : lighterSets;
    }
}
