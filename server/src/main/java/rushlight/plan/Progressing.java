package rushlight.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.evidence.BenjaminiHochberg;
import rushlight.evidence.Change;
import rushlight.evidence.Line;
import rushlight.evidence.Rate;
import rushlight.evidence.Retest;
import rushlight.evidence.Tally;
import rushlight.evidence.Trend;
import rushlight.evidence.Verdict;
import rushlight.findings.Assessment;
import rushlight.findings.Assessor;
import rushlight.findings.Evidence;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.findings.Polarity;
import rushlight.situation.Since;
import rushlight.situation.TapedGame;

/**
 * Holds the games since a cut against those before it. A rate is counted over the whole tape and then dealt out by games, so
 * that both halves mean the same main move; what counts the latest few or compares two rates is judged anew on each half.
 */
public final class Progressing {
    private final Assessor assessor;

    /** By these findings. */
    public Progressing(Assessor assessor) {
        this.assessor = assessor;
    }

    /** What became of his gaps. */
    public ProgressSince of(Since since) {
        Halves halves = new Halves(
                assessor.assess(since.before()), assessor.assess(since.whole()), assessor.assess(since.after()), since);
        List<Progress> all = halves.before().findings().stream()
                .filter(one -> one.finding().standard().line().isPresent()
                        || one.finding().counting().tally().isPresent())
                .sorted(Judged.mostTellingFirst())
                .filter(one -> isFollowed(one, halves))
                .map(one -> progress(one, halves))
                .filter(one -> one.finding().polarity() == Polarity.GAP || one.change() == Change.SLIPPING)
                .toList();
        List<Progress> told = together(all).stream()
                .map(one -> one.saying(ProgressWords.of(one)))
                .toList();
        return new ProgressSince(
                since.whole().prospect(), since, told, fresh(halves), ProgressWords.cautions(since, told));
    }

    private record Halves(Assessment before, Assessment whole, Assessment after, Since since) {
        Judged whole(Judged one) {
            return whole.finding(one.finding().slug()).orElse(one);
        }

        Optional<Judged> after(Judged one) {
            return after.finding(one.finding().slug());
        }

        boolean isAfter(TapedGame game) {
            return since.after().games().stream().anyMatch(late -> late.id().equals(game.id()));
        }

        boolean isBefore(TapedGame game) {
            return since.before().games().stream().anyMatch(early -> early.id().equals(game.id()));
        }
    }

    /** Gaps and strengths that stood then, and whatever is about somebody's health and happened at all. */
    private static boolean isFollowed(Judged one, Halves halves) {
        Polarity polarity = one.finding().polarity();
        boolean happened = one.finding().safety()
                && (one.outcome().rate().events() > 0
                        || halves.after(one)
                                .filter(after -> after.outcome().rate().events() > 0)
                                .isPresent());
        return (polarity == Polarity.GAP || polarity == Polarity.STRENGTH)
                && (one.verdict().stands() || happened);
    }

    private static List<Judged> fresh(Halves halves) {
        Set<String> stood = halves.before().findings().stream()
                .filter(one -> one.verdict().stands())
                .map(one -> one.finding().slug())
                .collect(Collectors.toSet());
        return halves.after().findings().stream()
                .filter(one -> one.finding().polarity() == Polarity.GAP
                        && one.verdict().stands()
                        && !stood.contains(one.finding().slug()))
                .sorted(Judged.mostTellingFirst())
                .toList();
    }

    private static Progress progress(Judged one, Halves halves) {
        Optional<Tally> tally = one.finding().counting().tally();
        if (tally.isPresent() || one.finding().measure() == Measure.DIFFERENCE) {
            return anew(one, halves, tally);
        }
        List<Evidence.OfGame> byGame = halves.whole(one).evidence().byGame();
        Rate then = byGame.stream()
                .filter(game -> halves.isBefore(game.game()))
                .map(Evidence.OfGame::rate)
                .reduce(new Rate(0, 0), Rate::plus);
        List<Rate> since = byGame.stream()
                .filter(game -> halves.isAfter(game.game()))
                .map(Evidence.OfGame::rate)
                .toList();
        Rate now = since.stream().reduce(new Rate(0, 0), Rate::plus);
        Retest retest = new Retest(RetestTarget.line(one.finding()), then);
        int good = retest.events(now.events(), now.opportunities());
        return new Progress(
                one.finding(),
                then,
                one.verdict(),
                now,
                (int) since.stream().filter(rate -> rate.opportunities() > 0).count(),
                retest.change(since),
                OptionalDouble.of(retest.luck(good, now.opportunities())),
                false,
                OptionalDouble.of(retest.better(now)),
                Optional.empty(),
                byGame,
                "");
    }

    /** What is judged on each half by itself. */
    private static Progress anew(Judged one, Halves halves, Optional<Tally> tally) {
        Optional<Judged> after = halves.after(one);
        Rate now = after.map(a -> a.outcome().rate()).orElse(new Rate(0, 0));
        Verdict word = after.map(Judged::verdict).orElse(Verdict.NOT_ENOUGH_TAPE);
        Change change;
        if (tally.isPresent() && one.finding().safety() && now.events() > 0) {
            change = Change.HOLD;
        } else if (word == Verdict.CLEARED) {
            change = Change.CLEARED;
        } else {
            boolean few = word == Verdict.NOT_ENOUGH_TAPE || now.opportunities() < Line.FLOOR;
            change = few ? Change.NOT_ENOUGH_TAPE : Change.NO_EVIDENCE_YET;
        }
        return new Progress(
                one.finding(),
                one.outcome().rate(),
                one.verdict(),
                now,
                after.map(Judged::games).orElse(0),
                change,
                OptionalDouble.empty(),
                false,
                OptionalDouble.empty(),
                Optional.empty(),
                List.of(),
                "");
    }

    /** The same with what still stands when all of them are tried together. */
    private static List<Progress> together(List<Progress> all) {
        List<Progress> tried = all.stream()
                .filter(one -> one.luck().isPresent() && one.change() != Change.NOT_ENOUGH_TAPE)
                .toList();
        List<Double> luck = BenjaminiHochberg.adjusted(
                tried.stream().map(one -> one.luck().getAsDouble()).toList());
        List<Progress> asked =
                all.stream().filter(one -> trend(one).canBeAsked()).toList();
        List<Double> courses = BenjaminiHochberg.adjusted(
                asked.stream().map(one -> trend(one).p()).toList());
        List<Progress> told = new ArrayList<>();
        for (Progress one : all) {
            int among = tried.indexOf(one);
            int place = asked.indexOf(one);
            Optional<Progress.Course> course = place < 0
                    ? Optional.empty()
                    : Optional.of(course(trend(one), Objects.requireNonNull(courses.get(place))));
            told.add(one.with(among >= 0 && luck.get(among) <= BenjaminiHochberg.ALLOWED, course));
        }
        return told;
    }

    private static Progress.Course course(Trend trend, double adjusted) {
        return new Progress.Course(trend.z() > 0, trend.p(), adjusted <= BenjaminiHochberg.ALLOWED);
    }

    private static Trend trend(Progress one) {
        return Trend.of(one.byGame().stream().map(Evidence.OfGame::rate).toList());
    }
}
