package rushlight.findings;

import java.util.Locale;

/** How a finding counts. */
public enum Measure {
    /** Events by opportunities. */
    RATE,
    /** The part that one value of a facet has of all opportunities. */
    SHARE,
    /** One rate over another. */
    DIFFERENCE,
    /** Events among the latest opportunities. */
    COUNT,
    /** No count that could be judged. */
    NOTE;

    /** The word as it is written in files and answers. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }
}
