package rushlight.notes;

import java.util.Locale;

/** How what is named was said. */
public enum Assertion {
    /** It happened; of a trait or an alignment: it is so. */
    PERFORMED,
    NOT_PERFORMED,
    /** The speaker would have it. */
    WANTED,
    /** It might have been, or may be. */
    HYPOTHETICAL,
    UNCERTAIN,
    /** What he does as a rule. */
    TENDENCY;

    /** The word in files and in JSON. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
