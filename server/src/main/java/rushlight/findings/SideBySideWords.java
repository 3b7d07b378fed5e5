package rushlight.findings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rushlight.evidence.Difference;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;

/** Says what the tape tells of two men. */
final class SideBySideWords {
    private SideBySideWords() {}

    static String say(
            Finding finding, String counts, Difference difference, Interval likely, SideBySide.Standing standing) {
        String points = Math.round(100 * difference.observed()) + " points between them, likely range "
                + Math.round(100 * likely.low()) + " to " + Math.round(100 * likely.high());
        return switch (standing) {
            case APART -> counts + ": the tape tells them apart (" + points + ").";
            case LEANING -> counts + ": leaning, but among so many comparisons it may well be luck (" + points + ").";
            case NOT_TOLD_APART -> counts + ": the tape cannot tell them apart (" + points + ").";
            case NOT_ENOUGH_TAPE ->
                counts + ": not enough tape to compare; each wants "
                        + finding.standard().enough() + " chances.";
            case NOT_COMPARED -> throw new IllegalArgumentException("Two men with a difference were compared.");
        };
    }

    /** The counts of men who are not compared, and why; empty where the finding is a rate and they are. */
    static Optional<String> whyNot(Finding finding, List<String> names, List<Judged> judged) {
        Optional<String> why = whyNot(finding.measure());
        if (finding.measure() == Measure.DIFFERENCE || finding.measure() == Measure.NOTE) {
            return why.map(text -> "Not compared: " + text);
        }
        String counts = IntStream.range(0, names.size())
                .mapToObj(i -> counted(names.get(i), judged.get(i)))
                .collect(Collectors.joining(", "));
        return why.map(text -> counts + ": not compared; " + text);
    }

    private static Optional<String> whyNot(Measure measure) {
        return switch (measure) {
            case RATE -> Optional.empty();
            case SHARE ->
                Optional.of("each is counted by what that man did most often, which need not be the same for both.");
            case DIFFERENCE -> Optional.of("it is itself a difference of two rates, each man's between his own reps.");
            case COUNT -> Optional.of("only the latest chances of each man are counted, and that is no rate.");
            case NOTE -> Optional.of("it is drawn from other findings and counts nothing itself.");
        };
    }

    /** "Tam Orrin 9 of 10"; where no chance is sure to have been his, how many may have been. */
    static String counted(String name, Judged judged) {
        Rate rate = judged.outcome().rate();
        if (rate.opportunities() > 0) {
            return name + " " + rate.events() + " of " + rate.opportunities();
        }
        int unknown = judged.unknownDuties();
        return name + (unknown == 0 ? " no chance" : " duty unknown on " + unknown + (unknown == 1 ? " rep" : " reps"));
    }
}
