package rushlight.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import rushlight.evidence.Change;
import rushlight.evidence.Line;
import rushlight.evidence.Rate;
import rushlight.evidence.Retest;
import rushlight.evidence.Side;
import rushlight.findings.Finding;
import rushlight.findings.Measure;
import rushlight.findings.Polarity;
import rushlight.situation.Since;

/** Says then and now in words. */
final class ProgressWords {
    /** How alike the reps of one game are taken to be: a common guess, not a measurement. */
    private static final double ALIKE = 0.1;

    private static final int OF_ONE_GAME = 8;

    private ProgressWords() {}

    static String of(Progress one) {
        String counts = counts(one);
        return switch (one.change()) {
            case HOLD ->
                counts + " Hold: no full contact, tell the trainer, and look at the clip before a word is said to him.";
            case NOT_ENOUGH_TAPE ->
                counts + " Too few since to judge"
                        + (one.now().opportunities() < Line.FLOOR ? "; " + Line.FLOOR + " are the least." : ".");
            case CLEARED -> counts + better(one) + course(one);
            case IMPROVING -> counts + luck(one) + better(one) + toClear(one) + course(one);
            case SLIPPING ->
                counts + " So much worse that luck alone would bring an unchanged player there in one case of ten"
                        + " or less." + course(one);
            case NO_EVIDENCE_YET ->
                counts + (isWorse(one) ? " No better than then." : luck(one)) + enough(one) + course(one);
        };
    }

    private static boolean isWorse(Progress one) {
        return one.better().isPresent() && one.better().getAsDouble() < 0.5;
    }

    private static String counts(Progress one) {
        return RetestWords.capital(then(one.finding(), one.now()) + " since, " + share(one.then()) + " before.");
    }

    /** "took 16 of 18 kick-outs under the block (89 %)". */
    private static String then(Finding finding, Rate rate) {
        String figures = finding.measure() == Measure.DIFFERENCE ? "" : percent(rate);
        return finding.advice()
                        .said(rate)
                        .filter(words -> finding.measure() != Measure.DIFFERENCE)
                        .map(ProgressWords::bare)
                        .orElse(finding.shown() + ": " + rate.events() + " of " + rate.opportunities())
                + figures;
    }

    private static String share(Rate rate) {
        return rate.events() + " of " + rate.opportunities() + percent(rate);
    }

    private static String percent(Rate rate) {
        return rate.share().isEmpty()
                ? ""
                : " (" + Math.round(100 * rate.share().getAsDouble()) + " %)";
    }

    private static String luck(Progress one) {
        if (one.luck().isEmpty()) {
            return "";
        }
        String so = " Luck alone brings an unchanged player that far "
                + inHundred(one.luck().getAsDouble());
        return one.change() == Change.IMPROVING && !one.amongAll()
                ? so + "; among all his gaps tried at once that is not rare enough to be sure."
                : so + ".";
    }

    private static String better(Progress one) {
        return one.better().isEmpty()
                ? ""
                : " " + odds(one.better().getAsDouble()) + " that he truly does better than then.";
    }

    private static String toClear(Progress one) {
        Retest retest = new Retest(RetestTarget.line(one.finding()), one.then());
        int n = one.now().opportunities();
        OptionalInt good = retest.clearing(n);
        if (good.isEmpty()) {
            return " Clearing takes " + retest.line().enoughToSettle() + " chances or more.";
        }
        int events = retest.events(good.getAsInt(), n);
        return (retest.line().side() == Side.ABOVE
                        ? events == 0 ? " None" : " At most " + events
                        : " " + events + " or more")
                + " of " + n + " would have cleared it.";
    }

    private static String enough(Progress one) {
        if (one.luck().isEmpty()) {
            return "";
        }
        OptionalInt enough = new Retest(RetestTarget.line(one.finding()), one.then()).enough();
        if (enough.isPresent() && enough.getAsInt() > one.now().opportunities()) {
            return " A true change as large as is aimed at shows four times in five from " + enough.getAsInt()
                    + " chances on.";
        }
        return enough.isEmpty() ? " Then he was too near to what is aimed at for any number to show it reliably." : "";
    }

    private static String course(Progress one) {
        return one.trend()
                .filter(Progress.Course::amongAll)
                .map(course -> " Over all his games it " + (course.rises() ? "rises" : "falls") + " (p "
                        + String.format(Locale.ROOT, "%.3f", course.p()) + ", his gaps tried together).")
                .orElse("");
    }

    /** What to keep in mind: the bounce of what was picked for being worst, likeness within a game, many tries. */
    static List<String> cautions(Since since, List<Progress> told) {
        List<String> all = new ArrayList<>();
        long tried = told.stream()
                .filter(one -> one.luck().isPresent() && one.change() != Change.NOT_ENOUGH_TAPE)
                .count();
        if (!told.isEmpty()) {
            all.add("A gap was found because it looked worst among many, so some rebound comes by itself.");
        }
        if (!told.isEmpty()) {
            all.add("Reps of one game are alike: if by a tenth, " + OF_ONE_GAME
                    + " chances of one game tell as much as "
                    + Math.round(OF_ONE_GAME / (1 + (OF_ONE_GAME - 1) * ALIKE)) + " of different games.");
        }
        if (tried > 1) {
            all.add("Of " + tried + " gaps that did not change, one or more would look improved by luck "
                    + inHundred(1 - Math.pow(1 - Retest.LUCK, (double) tried)) + ".");
        }
        if (!since.untold().isEmpty()) {
            all.add("Left out, as they have no date: "
                    + String.join(
                            ", ",
                            since.untold().stream().map(game -> game.name()).toList()) + ".");
        }
        if (told.stream().anyMatch(one -> one.finding().polarity() == Polarity.GAP)) {
            all.add("The words speak of reps, not of the man. What was not cleared has not failed.");
        }
        return all;
    }

    private static String inHundred(double chance) {
        return RetestWords.inHundred(chance);
    }

    private static String odds(double probability) {
        return probability > 0.99 ? "Better than 99 in 100" : "About " + Math.round(100 * probability) + " in 100";
    }

    private static String bare(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
