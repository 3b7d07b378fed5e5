package rushlight.archive;

import java.util.List;
import java.util.Optional;

/** What came of changing one rep, or of taking a change back. */
public sealed interface EditResult {
    /**
     * It is stored and can be counted.
     *
     * @param revision number of the change
     * @param said one sentence for people
     * @param reading the reading as it is now; empty where it is gone
     */
    record Done(long revision, String said, Optional<KeptReading> reading) implements EditResult {}

    /** There is no such reading, log or change. */
    record Missing() implements EditResult {}

    /**
     * Somebody changed the reading meanwhile.
     *
     * @param current the reading as it is now
     */
    record Stale(KeptReading current) implements EditResult {}

    /**
     * It does not go with what is there; nothing was changed.
     *
     * @param reasons one sentence each
     */
    record Refused(List<String> reasons) implements EditResult {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }
}
