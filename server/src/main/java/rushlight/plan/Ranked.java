package rushlight.plan;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Line;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.findings.Severity;
import rushlight.knowledge.TrainedSkill;

/**
 * A gap with its place in the order of what to work on: how far it falls short times what that costs, how sure it is, how
 * often the situation comes, how much of the skill moves in a block. The weights are proposals of the house.
 *
 * @param gap the gap
 * @param skill the skill that it shows to be missing
 * @param shown what film counts of that skill; empty where no finding counts it, or on too few chances
 * @param score 0 to 1000
 * @param perGame opportunities a game
 * @param sure how sure the gap is, 0 to 1
 */
record Ranked(Judged gap, TrainedSkill skill, Optional<ShownSkill> shown, int score, double perGame, double sure) {
    /** Where neither a gap nor the skill that it shows to be missing has a rate that could fall short, the middle is taken. */
    private static final double MIDDLE = 0.5;
    /** What a coach wants lies this far on the good side of the line. */
    private static final double ABOVE_THE_LINE = 0.15;
    /** Situations that come this often in a game, or more often, count in full. */
    private static final double OFTEN = 10;

    static Ranked of(Judged gap, TrainedSkill skill, Optional<ShownSkill> shown, int games) {
        Rate rate = gap.outcome().rate();
        double perGame = (double) rate.opportunities() / Math.max(1, games);
        double sure = sure(gap);
        double score = 1000
                * shortfall(gap, shown)
                * cost(gap.finding().severity())
                * sure
                * Math.sqrt(Math.min(1, perGame / OFTEN))
                * skill.trainability();
        return new Ranked(gap, skill, shown, (int) Math.round(score), perGame, sure);
    }

    String finding() {
        return gap.finding().slug();
    }

    boolean isSafety() {
        return gap.finding().safety() && gap.outcome().rate().events() > 0;
    }

    /** Safety, then the score, then the surer, then the one nearer to the roots, then the name. */
    static Comparator<Ranked> firstThingsFirst() {
        return Comparator.<Ranked>comparingInt(r -> r.isSafety() ? 0 : 1)
                .thenComparing(Ranked::score, Comparator.reverseOrder())
                .thenComparing(Ranked::sure, Comparator.reverseOrder())
                .thenComparingInt(r -> r.skill.layer())
                .thenComparing(Ranked::finding);
    }

    /** The four things the rank is made of, in words. */
    String words() {
        return "Weight " + score + " of 1000: " + gap.finding().severity().slug() + " severity, "
                + surely(sure) + ", " + count(perGame) + " a game, a skill that moves "
                + pace(skill.trainability()) + " in one block."
                + shown.map(film -> " What film shows of " + skill.label() + ": " + film.words())
                        .orElse("");
    }

    private static String surely(double sure) {
        return sure > 0.99 ? "better than 99 % sure" : Math.round(100 * sure) + " % sure";
    }

    private static String count(double perGame) {
        return perGame >= 10
                ? "about " + Math.round(perGame) + " chances"
                : perGame < 0.95 ? "less than one chance" : "about " + Math.round(10 * perGame) / 10.0 + " chances";
    }

    private static String pace(double trainability) {
        return trainability >= 0.85
                ? "quickly"
                : trainability >= 0.65 ? "well" : trainability >= 0.45 ? "slowly" : "little";
    }

    private static double cost(Severity severity) {
        return switch (severity) {
            case HIGH -> 1.0;
            case MODERATE -> 0.8;
            case LOW -> 0.6;
            case NONE -> 0.4;
        };
    }

    private static double sure(Judged gap) {
        OptionalDouble p = gap.outcome().probability();
        if (p.isPresent() && gap.finding().measure() != Measure.COUNT) {
            return p.getAsDouble();
        }
        Verdict verdict = gap.verdict();
        return verdict == Verdict.CONFIRMED ? 0.95 : verdict == Verdict.LIKELY ? 0.80 : 0.50;
    }

    /** How far the gap's own rate falls short; of a gap without one, that of the skill, as film counts it. */
    private static double shortfall(Judged gap, Optional<ShownSkill> shown) {
        OptionalDouble own = shortfall(gap);
        return own.isPresent()
                ? own.getAsDouble()
                : shown.map(film -> shortfall(film.judged()).orElse(MIDDLE)).orElse(MIDDLE);
    }

    /** How far the good rate is below what a coach wants, as a part of it: 0 to 1; empty where there is no rate. */
    private static OptionalDouble shortfall(Judged gap) {
        OptionalDouble line = gap.finding().standard().line();
        Rate rate = gap.outcome().rate();
        if (line.isEmpty() || gap.finding().measure() != Measure.RATE || rate.opportunities() < Line.FLOOR) {
            return OptionalDouble.empty();
        }
        boolean bad = ShownSkill.isBad(gap.finding());
        double event = (rate.events() + 0.5) / (rate.opportunities() + 1.0);
        double good = bad ? 1 - event : event;
        double wanted = Math.min(0.95, (bad ? 1 - line.getAsDouble() : line.getAsDouble()) + ABOVE_THE_LINE);
        return OptionalDouble.of(Math.max(0, (wanted - good) / wanted));
    }
}
