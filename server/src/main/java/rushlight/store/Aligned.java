package rushlight.store;

/**
 * What it took to bring a folder in step with the store elsewhere.
 *
 * @param how what was done
 * @param statements how many statements were sent there, or changed here
 */
public record Aligned(How how, long statements) {
    /** What was done. */
    public enum How {
        /** Nothing: they were in step. */
        NOTHING,
        /** The store was empty and has the folder's film now. */
        SENT,
        /** Changes were fetched that followed on what the folder had; its history tells of them. */
        CONTINUED,
        /** What the folder had is no longer the beginning of what it has: somebody was erased, or another film was fetched. */
        REPLACED
    }
}
