package rushlight.findings;

import java.util.Locale;

/** What his reps say to an opinion. */
public enum Agreement {
    AGREES,
    DISAGREES,
    /** The finding it speaks of is open: too few reps, or they do not point far enough. */
    NOT_ENOUGH_TAPE;

    /** The word in JSON. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
