package rushlight.web;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.plan.RetestTarget;

/**
 * What the next opportunities must show of a gap, as programs read it. Every count is one of the finding's events.
 *
 * @param finding slug of the finding
 * @param now the count that shows the gap today
 * @param target the events that a plan names: those that clear it, else those that show him improving; null where none would
 * @param opportunities the next opportunities they are counted in
 * @param atMost whether targets are the most events allowed; otherwise the fewest wanted
 * @param clears the events that clear it; null where so few opportunities clear nothing
 * @param improves the events that show him improving; null where luck could bring any count
 * @param luck the chance of an unchanged player to reach {@code improves}
 * @param shown the chance of one who truly improved as much as is aimed at to reach it
 * @param enough the opportunities from which on such a rise is shown four times in five; null where 120 are too few
 * @param sentence all of it in words
 */
public record RetestAnswer(
        String finding,
        Now now,
        OptionalInt target,
        int opportunities,
        boolean atMost,
        OptionalInt clears,
        OptionalInt improves,
        OptionalDouble luck,
        OptionalDouble shown,
        OptionalInt enough,
        String sentence) {
    /** A count with its rate; the rate is null where there was no opportunity. */
    public record Now(int opportunities, int events, OptionalDouble rate) {}

    /** The answer for one target. */
    public static RetestAnswer of(RetestTarget target) {
        return new RetestAnswer(
                target.finding(),
                new Now(
                        target.now().opportunities(),
                        target.now().events(),
                        target.now().share()),
                target.target(),
                target.opportunities(),
                target.atMost(),
                target.clears(),
                target.improves(),
                target.luck(),
                target.shown(),
                target.enough(),
                target.sentence());
    }
}
