package rushlight.agreement;

import java.util.Locale;

/** How far what two evaluators tag can be relied on. The lines .800 and .667 are Krippendorff's customary ones, from memory. */
public enum Trust {
    /** Fewer common reps than a coefficient needs: the counts alone. */
    TOO_FEW("too few reps in common to say"),
    /** Both said one and the same thing throughout. */
    NO_VARIETY("only one thing was ever said, so chance cannot be told from agreement"),
    LOW("they do not agree enough to rely on it"),
    TENTATIVE("they agree enough for tentative words"),
    GOOD("they agree");

    /** The fewest common reps for a coefficient. */
    public static final int ENOUGH = 30;

    private static final double TENTATIVELY = 0.667;
    private static final double WELL = 0.8;

    private final String words;

    Trust(String words) {
        this.words = words;
    }

    static Trust of(double coefficient) {
        return coefficient >= WELL ? GOOD : coefficient >= TENTATIVELY ? TENTATIVE : LOW;
    }

    /** For people. */
    public String words() {
        return words;
    }

    /** The word in JSON. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
