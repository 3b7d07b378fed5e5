package rushlight.notes;

import java.util.Locale;

/** How far a proposal can be trusted without a look. */
public enum Band {
    SURE,
    /** Something was interpreted. */
    CHECK,
    /** A guess. */
    WEAK;

    /** The word in files and in JSON. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }
}
