package rushlight.notes;

import java.util.Locale;

/**
 * Hits, false ones and missed ones. A share is told by {@code right} and {@code missed} alone; a figure of nothing is not a
 * number.
 */
record Tally(double right, double wrong, double missed) {
    static final Tally NONE = new Tally(0, 0, 0);
    static final Tally RIGHT = new Tally(1, 0, 0);
    static final Tally WRONG = new Tally(0, 1, 0);
    static final Tally MISSED = new Tally(0, 0, 1);

    /** One case of a share. */
    static Tally of(boolean right) {
        return right ? RIGHT : MISSED;
    }

    Tally plus(Tally other) {
        return new Tally(right + other.right, wrong + other.wrong, missed + other.missed);
    }

    /** How many there were to find. */
    double marked() {
        return right + missed;
    }

    double precision() {
        return right / (right + wrong);
    }

    double recall() {
        return right / (right + missed);
    }

    double f1() {
        return 2 * right / (2 * right + wrong + missed);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.0f right, %.0f false, %.0f missed", right, wrong, missed);
    }
}
