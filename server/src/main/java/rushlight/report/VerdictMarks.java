package rushlight.report;

import rushlight.evidence.Verdict;

/** A verdict as a filling disc with its word: the shape never stands alone. */
public final class VerdictMarks {
    private VerdictMarks() {}

    /** The disc. */
    public static String of(Verdict verdict) {
        return switch (verdict) {
            case NOT_ENOUGH_TAPE -> "\u25cc";
            case WATCH -> "\u25d4";
            case LIKELY -> "\u25d1";
            case CONFIRMED -> "\u25cf";
            case CLEARED -> "\u25cb";
        };
    }

    /** The word. */
    public static String word(Verdict verdict) {
        return verdict.slug().replace('-', ' ');
    }
}
