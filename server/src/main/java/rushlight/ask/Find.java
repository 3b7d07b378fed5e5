package rushlight.ask;

import java.util.Locale;

/** What a question wants to see. */
public enum Find {
    /** Players, ranked by how often an event came of its opportunity. */
    PROSPECTS,
    /** Single reps. */
    REPS,
    /** Terms of the book. */
    TECHNIQUES,
    /** What to do when a move is stopped, or against what a blocker does. */
    COUNTERS,
    /** What to train a skill, a fault or a finding with. */
    DRILLS,
    /** What film says about players. */
    FINDINGS,
    /** Players, or two situations, side by side. */
    COMPARE,
    /** Players like another one. */
    SIMILAR;

    /** The word as it is written in files and answers. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }
}
