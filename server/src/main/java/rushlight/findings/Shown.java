package rushlight.findings;

import java.util.Locale;
import rushlight.evidence.Verdict;

/** Whether film shows what a role asks for. That it does not is no word about what he can do. */
public enum Shown {
    /** The strength or the task stands, or the gap is cleared. */
    SHOWN,
    /** There are chances enough, and they do not show it. */
    NOT_SHOWN,
    /** Fewer chances than a judgment needs. */
    NO_TAPE;

    /** The word as it is written in files and answers, such as {@code no-tape}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The word as people read it, such as "not enough tape". */
    public String words() {
        return this == NO_TAPE ? "not enough tape" : slug().replace('-', ' ');
    }

    static Shown of(Verdict verdict, boolean without) {
        return switch (verdict) {
            case NOT_ENOUGH_TAPE -> NO_TAPE;
            case WATCH -> NOT_SHOWN;
            case LIKELY, CONFIRMED -> without ? NOT_SHOWN : SHOWN;
            case CLEARED -> without ? SHOWN : NOT_SHOWN;
        };
    }
}
