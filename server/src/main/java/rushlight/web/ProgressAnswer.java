package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;
import rushlight.findings.Evidence;
import rushlight.findings.Judged;
import rushlight.plan.Progress;
import rushlight.plan.ProgressSince;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;

/**
 * What became of a prospect's gaps since a game, as programs read it.
 *
 * @param prospect his name
 * @param id his id
 * @param since the first game of the second half
 * @param before what the first half holds
 * @param after what the second half holds
 * @param findings the gaps that stood then, and the strengths that slip, most telling first
 * @param fresh the gaps that stand on the second half alone and did not stand then
 * @param cautions what to keep in mind when reading it
 */
public record ProgressAnswer(
        String prospect,
        String id,
        Cut since,
        Half before,
        Half after,
        List<Finding> findings,
        List<Fresh> fresh,
        List<String> cautions) {
    /** The game a tape was cut before. */
    public record Cut(String id, String name, Optional<String> date) {}

    /** What half a tape holds. */
    public record Half(int reps, int games) {}

    /** A count with its rate and its likely range; the three are null where there was no opportunity. */
    public record Counted(int opportunities, int events, OptionalDouble rate, OptionalDouble low, OptionalDouble high) {
        static Counted of(Rate rate) {
            Interval shown = rate.jeffreys(Rate.SHOWN);
            boolean none = rate.opportunities() == 0;
            return new Counted(
                    rate.opportunities(),
                    rate.events(),
                    rate.share(),
                    none ? OptionalDouble.empty() : OptionalDouble.of(shown.low()),
                    none ? OptionalDouble.empty() : OptionalDouble.of(shown.high()));
        }
    }

    /** How a rate goes over the games: whether it rises, how likely luck makes such a course, whether that stands among all. */
    public record Course(boolean rises, double p, boolean amongAll) {}

    /** The count of one game. */
    public record OfGame(String id, String name, boolean since, Counted count) {}

    /**
     * One finding then and now.
     *
     * @param verdict the word it had earned then
     * @param change what the count since says: {@code hold}, {@code not-enough-tape}, {@code cleared}, {@code improving},
     *     {@code slipping} or {@code no-evidence-yet}
     * @param luck the chance that an unchanged player does as well or better by luck; null where no rate is tried
     * @param amongAll whether that still tells a change from luck when all his gaps are tried together
     * @param better the probability that he truly does better than then; null where no rate is tried
     * @param course how it goes over all his games; null under four games with an opportunity
     */
    public record Finding(
            String finding,
            String polarity,
            String verdict,
            String severity,
            boolean safety,
            Counted then,
            Counted now,
            int games,
            String change,
            OptionalDouble luck,
            boolean amongAll,
            OptionalDouble better,
            Optional<Course> course,
            OptionalDouble line,
            List<OfGame> byGame,
            String sentence) {}

    /** A gap that stands since and did not before. */
    public record Fresh(String finding, String verdict, Counted now, String sentence) {}

    /** The answer for one prospect. */
    public static ProgressAnswer of(ProgressSince progress) {
        TapedGame first = progress.since().first();
        List<String> late =
                progress.since().after().games().stream().map(TapedGame::id).toList();
        return new ProgressAnswer(
                progress.prospect().name(),
                progress.prospect().id(),
                new Cut(first.id(), first.name(), first.date().map(Object::toString)),
                half(progress.since().before()),
                half(progress.since().after()),
                progress.findings().stream().map(one -> finding(one, late)).toList(),
                progress.fresh().stream().map(ProgressAnswer::fresh).toList(),
                progress.cautions());
    }

    private static Half half(Tape tape) {
        return new Half(tape.size(), tape.games().size());
    }

    private static Finding finding(Progress one, List<String> late) {
        return new Finding(
                one.finding().slug(),
                one.finding().polarity().slug(),
                one.verdict().slug(),
                one.finding().severity().slug(),
                one.finding().safety(),
                Counted.of(one.then()),
                Counted.of(one.now()),
                one.games(),
                one.change().slug(),
                one.luck(),
                one.amongAll(),
                one.better(),
                one.trend().map(course -> new Course(course.rises(), course.p(), course.amongAll())),
                one.finding().standard().line(),
                one.byGame().stream().map(game -> ofGame(game, late)).toList(),
                one.sentence());
    }

    private static OfGame ofGame(Evidence.OfGame one, List<String> late) {
        return new OfGame(
                one.game().id(), one.game().name(), late.contains(one.game().id()), Counted.of(one.rate()));
    }

    private static Fresh fresh(Judged one) {
        return new Fresh(
                one.finding().slug(),
                one.verdict().slug(),
                Counted.of(one.outcome().rate()),
                one.sentence());
    }
}
