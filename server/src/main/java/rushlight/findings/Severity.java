package rushlight.findings;

import java.util.Locale;

/** How much a finding matters, from least to most. */
public enum Severity {
    NONE,
    LOW,
    MODERATE,
    HIGH;

    /** The word as it is written in files and answers. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }
}
