package rushlight.cli;

/** How much is said of each finding. */
enum Depth {
    /** The claim and a few reps; what is open by name only. */
    SHORT(6),
    /** Why it matters and what to train with it; what is open in a sentence. */
    PLAIN(12),
    /** Everything spelled out, what is cleared or hardly seen too. */
    FULL(Integer.MAX_VALUE);

    private final int mostReps;

    Depth(int mostReps) {
        this.mostReps = mostReps;
    }

    int mostReps() {
        return mostReps;
    }
}
