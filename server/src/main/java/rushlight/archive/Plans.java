package rushlight.archive;

import java.util.List;
import java.util.Optional;
import rushlight.store.KeptPlans;
import rushlight.store.KeptPlans.Kept;
import rushlight.store.Store;

/**
 * Plans of practice, kept in a data folder: one for each prospect, with every version it ever had, each as it was written when
 * it was kept. It is no film and changes no count.
 */
public final class Plans {
    private final Store store;

    private Plans(Store store) {
        this.store = store;
    }

    /** Those of an open folder. */
    public static Plans of(Archive archive) {
        return new Plans(archive.store());
    }

    /**
     * What is to be kept.
     *
     * @param request what it was asked for with
     * @param sheet the plan
     * @param by who keeps it; may be empty
     * @param note why; may be empty
     */
    public record Written(String request, String sheet, String by, String note) {}

    /** Every version, the newest first; empty where there never was one. */
    public List<Kept> history(String prospect) {
        return store.ask(data -> KeptPlans.in(data).of(prospect));
    }

    /** The one that stands; empty where none was kept, or it was taken back. */
    public Optional<Kept> standing(String prospect) {
        return history(prospect).stream().findFirst().filter(one -> !one.takenBack());
    }

    /** The number of the newest version; 0 where there never was one. */
    public int newest(String prospect) {
        return store.ask(data -> KeptPlans.in(data).newest(prospect));
    }

    /**
     * Keeps a plan as the next version.
     *
     * @param version the one it changes; 0 where there is none yet
     * @return what stands now; empty, and nothing kept, where another version is the newest
     */
    public Optional<Kept> keep(String prospect, Written written, int version) {
        return add(new Kept(
                prospect,
                version + 1,
                written.request(),
                written.sheet(),
                written.by(),
                written.note(),
                store.revision(),
                Writing.now(),
                false));
    }

    /**
     * Makes an earlier version stand again, as the next one.
     *
     * @param old the version to bring back
     * @param version the one it changes
     */
    public Optional<Kept> bringBack(Kept old, int version) {
        return add(again(old, version + 1, false));
    }

    /** Takes the plan back; its versions stay. */
    public Optional<Kept> takeBack(Kept newest, int version) {
        return add(again(newest, version + 1, true));
    }

    /** The words of one version as another. */
    private static Kept again(Kept old, int version, boolean takenBack) {
        return new Kept(
                old.prospect(),
                version,
                old.request(),
                old.sheet(),
                old.by(),
                old.note(),
                old.film(),
                Writing.now(),
                takenBack);
    }

    private Optional<Kept> add(Kept next) {
        return store.keep(kept -> {
            if (kept.plans().newest(next.prospect()) != next.version() - 1) {
                return Optional.<Kept>empty();
            }
            kept.plans().add(next);
            return Optional.of(next);
        });
    }
}
