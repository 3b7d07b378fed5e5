package rushlight.evidence;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * A gap put to the test again, on opportunities that had no part in finding it.
 *
 * <p>Everything is counted in what one wants to see more of: where the gap lies under the line, the events; where it lies over
 * it, the opportunities without one. {@link #events} turns such a count back into events. What is wanted is {@link #aim}: 15
 * points past the line (a house proposal), and not more than half the way from the line to the end of the scale.
 *
 * @param line the line of the finding, on whose true side the gap lies
 * @param before the count that showed the gap
 */
public record Retest(Line line, Rate before) {
    /** How likely luck alone may bring an unchanged player to a target. */
    public static final double LUCK = 0.10;

    /** From how many opportunities on a true rise to the aim is shown with this chance is told by {@link #enough()}. */
    public static final double POWER = 0.80;

    /** The most opportunities looked ahead; what needs more is out of reach of a season. */
    public static final int FARTHEST = 120;

    private static final double STEP = 0.15;

    /** The rate of good outcomes that the work aims at, 0 to 1. */
    public double aim() {
        double good = goodLine();
        return Math.min(good + STEP, (1 + good) / 2);
    }

    /** The fewest good outcomes in {@code n} that luck alone brings an unchanged player in one of ten at most. */
    public OptionalInt improving(int n) {
        return new Predictive(good(before), n).fewestWithin(LUCK);
    }

    /** The chance that an unchanged player has so many good outcomes in {@code n}, or more. */
    public double luck(int good, int n) {
        return new Predictive(good(before), n).atLeast(good);
    }

    /** The fewest good outcomes in {@code n}, from more than one game, that clear the gap; empty where none would. */
    public OptionalInt clearing(int n) {
        return IntStream.rangeClosed(0, n)
                .filter(good -> clears(new Rate(events(good, n), n)))
                .findFirst();
    }

    /** The chance that a player who truly has {@link #aim()} comes to so many good outcomes in {@code n}, or more. */
    public double shown(int good, int n) {
        return good <= 0 ? 1 : BinomialDistribution.of(n, aim()).survivalProbability(good - 1);
    }

    /**
     * The fewest opportunities from which on a true rise to the aim is shown as improving with a chance of {@link #POWER} and
     * never again with less; empty where {@link #FARTHEST} are too few for that.
     */
    public OptionalInt enough() {
        int n = FARTHEST;
        while (n > 0 && shows(n)) {
            n--;
        }
        return n == FARTHEST ? OptionalInt.empty() : OptionalInt.of(n + 1);
    }

    private boolean shows(int n) {
        OptionalInt target = improving(n);
        return target.isPresent() && shown(target.getAsInt(), n) >= POWER;
    }

    /** So many good outcomes in {@code n}, as events of the finding. */
    public int events(int good, int n) {
        return line.side() == Side.BELOW ? good : n - good;
    }

    /** What fresh opportunities say of the gap: the count of each game, none of which had a part in finding it. */
    public Change change(List<Rate> games) {
        Rate fresh = games.stream().reduce(new Rate(0, 0), Rate::plus);
        if (fresh.opportunities() < Line.FLOOR) {
            return Change.NOT_ENOUGH_TAPE;
        }
        int good = good(fresh).events();
        if (clears(games)) {
            return Change.CLEARED;
        }
        if (luck(good, fresh.opportunities()) <= LUCK) {
            return Change.IMPROVING;
        }
        return slips(fresh) ? Change.SLIPPING : Change.NO_EVIDENCE_YET;
    }

    /** Whether the counts of these games clear the gap and reach the aim, whatever was before. */
    public boolean clears(List<Rate> games) {
        return clears(games.stream().reduce(new Rate(0, 0), Rate::plus)) && line.verdict(games) == Verdict.CLEARED;
    }

    /** Whether an unchanged player would be as bad as this, or worse, in one of ten cases at most. */
    public boolean slips(Rate fresh) {
        return new Predictive(good(before), fresh.opportunities())
                        .atMost(good(fresh).events())
                <= LUCK;
    }

    /**
     * The probability that the true rate of good outcomes is now over what it was, both under their Jeffreys posteriors, 0 to
     * 1.
     */
    public double better(Rate fresh) {
        return new Difference(good(fresh), good(before)).probabilityOver(0);
    }

    /** Whether the count, its games not asked about, clears the gap and reaches the aim. */
    private boolean clears(Rate fresh) {
        return line.verdict(fresh) == Verdict.CLEARED && good(fresh).events() >= aim() * fresh.opportunities() - 1e-9;
    }

    private double goodLine() {
        return line.side() == Side.BELOW ? line.value() : 1 - line.value();
    }

    private Rate good(Rate rate) {
        return line.side() == Side.BELOW ? rate : rate.mirrored();
    }
}
