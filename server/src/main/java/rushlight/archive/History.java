package rushlight.archive;

import java.util.List;
import java.util.Set;
import rushlight.store.PastChange;
import rushlight.store.Store;

/** What was changed, for people to look at. */
public final class History {
    private History() {}

    /** A change, and whether it was taken back since. */
    public record Told(PastChange change, boolean undone) {}

    /** The latest changes, the newest first. */
    public static List<Told> latest(Store store, int most) {
        List<PastChange> changes = store.history(all -> all.limit(most).toList());
        Set<Long> undone = Undoing.undone(changes);
        return changes.stream()
                .map(change -> new Told(change, undone.contains(change.revision())))
                .toList();
    }
}
