package rushlight.evidence;

import java.util.Locale;

/** What a count has earned the right to say, from least to most; {@link #CLEARED} says the opposite with confidence. */
public enum Verdict {
    /** Fewer opportunities than a judgment needs. */
    NOT_ENOUGH_TAPE,
    /** Enough opportunities, and they do not point far enough either way. */
    WATCH,
    /** At least 4 to 1 that the rate is on the true side of the line. */
    LIKELY,
    /** At least 19 to 1, on enough opportunities from more than one game, and on no single game's account. */
    CONFIRMED,
    /** At least 19 to 1 that the rate is on the other side, under the same conditions. */
    CLEARED;

    /** The fewest opportunities that confirm or clear. */
    static final int SETTLES = 10;

    /** The word as it is written in files and answers, such as {@code not-enough-tape}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether it is the last word: confirmed or cleared. */
    public boolean settled() {
        return this == CONFIRMED || this == CLEARED;
    }

    /** Whether the statement stands: likely or confirmed. */
    public boolean stands() {
        return this == LIKELY || this == CONFIRMED;
    }

    /** This word, or {@link #WATCH} where it says more than that. */
    public Verdict atMostWatch() {
        return stands() ? WATCH : this;
    }

    /** The word one step less sure: confirmed becomes likely, cleared becomes watch. */
    public Verdict lessSure() {
        return this == CONFIRMED ? LIKELY : this == CLEARED ? WATCH : this;
    }

    /**
     * The table of {@code common practice} that all rates go through: fewer than {@code enough} opportunities are not
     * enough; P at least .95 and at least .80 confirm and make likely; P at most .05 clears; confirming and clearing take ten
     * opportunities.
     *
     * @param probability P, that the rate is on the true side, 0 to 1
     * @param opportunities n, of the smaller side where two are compared
     * @param enough the least n that is judged at all
     */
    static Verdict of(double probability, int opportunities, int enough) {
        if (opportunities < enough) {
            return NOT_ENOUGH_TAPE;
        }
        boolean ten = opportunities >= SETTLES;
        if (ten && probability >= 0.95) {
            return CONFIRMED;
        }
        if (ten && probability <= 0.05) {
            return CLEARED;
        }
        return probability >= 0.80 ? LIKELY : WATCH;
    }
}
