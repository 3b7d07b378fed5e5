package rushlight.plan;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import rushlight.evidence.Line;
import rushlight.evidence.Rate;
import rushlight.evidence.Retest;
import rushlight.evidence.Side;
import rushlight.evidence.Tally;
import rushlight.findings.Finding;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.findings.Polarity;

/**
 * What the next opportunities must show of a gap, so that its going can be told from luck. All counts are events of the
 * finding in opportunities that had no part in finding it.
 *
 * @param finding slug of the finding
 * @param now the count that shows the gap today
 * @param opportunities the next opportunities it is counted in: as many as the coming games bring by what he had so far, and
 *     no fewer than can clear anything
 * @param atMost whether the targets are the most events allowed; otherwise the fewest wanted
 * @param clears the events that clear it; empty where so few opportunities clear nothing
 * @param improves the events that show him improving; empty where luck could bring any count
 * @param luck the chance of an unchanged player to reach {@code improves}, 0 to 1
 * @param shown the chance of one who truly improved as much as is aimed at to reach it, 0 to 1
 * @param enough the opportunities from which on such a rise is shown four times in five; empty where 120 are too few
 * @param sentence all of it in words
 */
public record RetestTarget(
        String finding,
        Rate now,
        int opportunities,
        boolean atMost,
        OptionalInt clears,
        OptionalInt improves,
        OptionalDouble luck,
        OptionalDouble shown,
        OptionalInt enough,
        String sentence) {
    /** A number of events as a target says it: "3 or more", "at most 1", "none". */
    public String count(int events) {
        if (!atMost) {
            return events + " or more";
        }
        return events == 0 ? "none" : "at most " + events;
    }

    /** The events that a plan names: those that clear it, else those that show him improving; empty where nothing would. */
    public OptionalInt target() {
        return clears.isPresent() ? clears : improves;
    }

    /**
     * The target for a gap.
     *
     * @param gap as it was found
     * @param gamesOnTape the games it was found in, 1 or more
     * @param gamesAhead the games until he is looked at again, 1 or more
     */
    public static RetestTarget of(Judged gap, int gamesOnTape, int gamesAhead) {
        int all = gap.outcome().rate().opportunities();
        int ahead = (int) Math.max(1, Math.round((double) all * gamesAhead / Math.max(1, gamesOnTape)));
        if (gap.finding().counting().tally().isPresent()) {
            return tallied(gap, gap.finding().counting().tally().orElseThrow());
        }
        if (gap.finding().measure() == Measure.DIFFERENCE
                || gap.finding().standard().line().isEmpty()) {
            return without(gap, ahead);
        }
        return rate(
                gap, Math.max(ahead, line(gap.finding()).enoughToSettle()), (double) all / Math.max(1, gamesOnTape));
    }

    /** The line of a gap, as a retest holds fresh opportunities against it; a strength's is turned about. */
    static Line line(Finding finding) {
        Line line = finding.standard().held().orElseThrow();
        return finding.polarity() == Polarity.STRENGTH ? line.turned() : line;
    }

    private static RetestTarget rate(Judged gap, int ahead, double perGame) {
        Retest retest = new Retest(line(gap.finding()), gap.outcome().rate());
        OptionalInt improves = retest.improving(ahead);
        OptionalInt clears = retest.clearing(ahead);
        RetestTarget figures = new RetestTarget(
                gap.finding().slug(),
                gap.outcome().rate(),
                ahead,
                retest.line().side() == Side.ABOVE,
                events(retest, clears, ahead),
                events(retest, improves, ahead),
                chance(improves, good -> retest.luck(good, ahead)),
                chance(improves, good -> retest.shown(good, ahead)),
                retest.enough(),
                "");
        return figures.saying(RetestWords.rate(gap.finding(), figures, retest, perGame));
    }

    private static OptionalInt events(Retest retest, OptionalInt good, int n) {
        return good.isEmpty() ? good : OptionalInt.of(retest.events(good.getAsInt(), n));
    }

    private static OptionalDouble chance(OptionalInt good, IntToDoubleFunction of) {
        return good.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(of.applyAsDouble(good.getAsInt()));
    }

    private static RetestTarget tallied(Judged gap, Tally tally) {
        RetestTarget figures = bare(gap, tally.within(), OptionalInt.of(0));
        return figures.saying(RetestWords.tally(gap.finding(), figures));
    }

    private static RetestTarget without(Judged gap, int ahead) {
        return bare(gap, ahead, OptionalInt.empty())
                .saying(gap.finding().measure() == Measure.DIFFERENCE ? RetestWords.TWO_RATES : RetestWords.NO_LINE);
    }

    private static RetestTarget bare(Judged gap, int opportunities, OptionalInt clears) {
        return new RetestTarget(
                gap.finding().slug(),
                gap.outcome().rate(),
                opportunities,
                true,
                clears,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                "");
    }

    private RetestTarget saying(String words) {
        return new RetestTarget(finding, now, opportunities, atMost, clears, improves, luck, shown, enough, words);
    }
}
