package rushlight.evidence;

import java.util.List;

/**
 * What the difference of two rates is held against: whether the first is over the second by more than {@code value}.
 *
 * @param value the difference that separates, 0 up to 1
 * @param minimum the opportunities each of the two wants; never fewer than {@link Line#FLOOR} are used
 */
public record Margin(double value, int minimum) {
    public Margin {
        if (!(value >= 0 && value < 1)) {
            throw new IllegalArgumentException("A margin is a difference of rates from 0 to 1, but this is " + value);
        }
    }

    /** The least opportunities on each side that are judged. */
    public int enough() {
        return Math.max(Line.FLOOR, minimum);
    }

    /** P, that the true difference is over the margin, 0 to 1. */
    public double probability(Difference difference) {
        return difference.probabilityOver(value);
    }

    /** The word for a difference whose games are not asked about; both sides need the minimum. */
    public Verdict verdict(Difference difference) {
        int smaller =
                Math.min(difference.first().opportunities(), difference.second().opportunities());
        return smaller < enough() ? Verdict.NOT_ENOUGH_TAPE : Verdict.of(probability(difference), smaller, enough());
    }

    /** The word for the differences of several games together, under the same two-game rules as {@link Line#verdict(List)}. */
    public Verdict verdict(List<Difference> games) {
        Difference all = games.stream().reduce(new Difference(new Rate(0, 0), new Rate(0, 0)), Margin::plus);
        Verdict word = verdict(all);
        if (!word.settled()) {
            return word;
        }
        List<Difference> played = games.stream().filter(Margin::played).toList();
        boolean carried = played.stream().anyMatch(game -> !Line.holds(word, probability(without(all, game))));
        return played.size() < 2 || carried ? word.lessSure() : word;
    }

    private static boolean played(Difference game) {
        return game.first().opportunities() + game.second().opportunities() > 0;
    }

    private static Difference plus(Difference a, Difference b) {
        return new Difference(a.first().plus(b.first()), a.second().plus(b.second()));
    }

    private static Difference without(Difference all, Difference game) {
        return new Difference(all.first().minus(game.first()), all.second().minus(game.second()));
    }
}
