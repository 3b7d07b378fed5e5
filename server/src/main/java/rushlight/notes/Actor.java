package rushlight.notes;

import java.util.Locale;

/** Who did it. */
public enum Actor {
    PROSPECT,
    BLOCKER,
    OTHER;

    /** The word in files and in JSON. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }
}
