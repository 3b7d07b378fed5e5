package rushlight.evidence;

import java.util.List;

/**
 * What a rate is held against.
 *
 * @param value the rate that separates, 0 to 1
 * @param side on which side of it the statement is true
 * @param minimum the opportunities it wants before it says anything; never fewer than {@link #FLOOR} are used
 */
public record Line(double value, Side side, int minimum) {
    /** Under six opportunities nothing is judged: six is the first n whose clean sheet bounds a rate under 40 %. */
    public static final int FLOOR = 6;

    public Line {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("A line is a rate from 0 to 1, but this is " + value);
        }
    }

    /** The least opportunities that are judged. */
    public int enough() {
        return Math.max(FLOOR, minimum);
    }

    /** The least opportunities that confirm or clear. */
    public int enoughToSettle() {
        return Math.max(Verdict.SETTLES, enough());
    }

    /** The same line with its other side as the true one. */
    public Line turned() {
        return new Line(value, side.opposite(), minimum);
    }

    /** P, that the true rate is on the true side of the line, 0 to 1. */
    public double probability(Rate rate) {
        return rate.probability(side, value);
    }

    /** The word for a count whose games are not asked about. */
    public Verdict verdict(Rate rate) {
        return Verdict.of(probability(rate), rate.opportunities(), enough());
    }

    /**
     * The word for the counts of several games together. Confirmed and cleared need two games, and become likely and watch
     * where leaving out any one game takes P under .80 (over .20). It is always made anew from all counts, so a word once
     * earned can be lost again.
     *
     * @param games the count of each game; games without an opportunity do no harm
     */
    public Verdict verdict(List<Rate> games) {
        Rate all = games.stream().reduce(new Rate(0, 0), Rate::plus);
        Verdict word = verdict(all);
        if (!word.settled()) {
            return word;
        }
        long played = games.stream().filter(game -> game.opportunities() > 0).count();
        boolean carried = games.stream()
                .filter(game -> game.opportunities() > 0)
                .anyMatch(game -> !holds(word, probability(all.minus(game))));
        return played < 2 || carried ? word.lessSure() : word;
    }

    static boolean holds(Verdict settled, double probability) {
        return settled == Verdict.CONFIRMED ? probability >= 0.80 : probability <= 0.20;
    }
}
