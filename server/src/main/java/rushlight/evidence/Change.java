package rushlight.evidence;

import java.util.Locale;

/** What fresh opportunities say about a gap that older ones had shown. */
public enum Change {
    /** What must not happen at all happened among the latest opportunities. */
    HOLD,
    /** So few fresh opportunities that nothing is judged. */
    NOT_ENOUGH_TAPE,
    /** At least 19 to 1 that the gap is gone, by the rule of {@link Verdict#CLEARED} on the fresh opportunities alone. */
    CLEARED,
    /** Better than an unchanged player would be by luck more than one time in ten. */
    IMPROVING,
    /** Worse than an unchanged player would be by luck more than one time in ten. */
    SLIPPING,
    /** None of these: the fresh opportunities do not tell a change from luck. */
    NO_EVIDENCE_YET;

    /** The word as it is written in files and answers, such as {@code no-evidence-yet}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
