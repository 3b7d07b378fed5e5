package rushlight.findings;

import java.util.Locale;

/** What a finding says about a player. */
public enum Polarity {
    /** Something that costs him. */
    GAP,
    /** Something that he does well. */
    STRENGTH,
    /** Something that is his fault or not, depending on a duty nobody has told us. */
    CONDITIONAL,
    /** Something to know beside the other findings. */
    NOTE;

    /** The word as it is written in files and answers. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }
}
