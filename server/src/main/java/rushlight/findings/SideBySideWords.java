package rushlight.findings;

import rushlight.evidence.Difference;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;

/** Says what the tape tells of two men. */
final class SideBySideWords {
    private SideBySideWords() {}

    static String say(
            Finding finding,
            Difference difference,
            Interval likely,
            SideBySide.Standing standing,
            String first,
            String second) {
        String counts = first + " " + counted(difference.first()) + ", " + second + " " + counted(difference.second());
        String points = Math.round(100 * difference.observed()) + " points between them, likely range "
                + Math.round(100 * likely.low()) + " to " + Math.round(100 * likely.high());
        return switch (standing) {
            case APART -> counts + ": the tape tells them apart (" + points + ").";
            case LEANING -> counts + ": leaning, but among so many comparisons it may well be luck (" + points + ").";
            case NOT_TOLD_APART -> counts + ": the tape cannot tell them apart (" + points + ").";
            case NOT_ENOUGH_TAPE ->
                counts + ": not enough tape to compare; each wants "
                        + finding.standard().enough() + " chances.";
        };
    }

    private static String counted(Rate rate) {
        return rate.opportunities() == 0 ? "no chance" : rate.events() + " of " + rate.opportunities();
    }
}
