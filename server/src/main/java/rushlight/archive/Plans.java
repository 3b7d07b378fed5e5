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
        return history(prospect).stream().findFirst().map(Kept::version).orElse(0);
    }

    /**
     * Keeps a plan as the next version.
     *
     * @param version the one it changes; 0 where there is none yet
     * @return what stands now; empty, and nothing kept, where another version is the newest
     */
    public Optional<Kept> keep(String prospect, Written written, int version) {
        long film = store.revision();
        return add(
                new Kept(
                        prospect,
                        version,
                        written.request(),
                        written.sheet(),
                        written.by(),
                        written.note(),
                        film,
                        Writing.now(),
                        false),
                version,
                false);
    }

    /**
     * Makes an earlier version stand again, as the next one.
     *
     * @param old the version to bring back
     * @param version the one it changes
     */
    public Optional<Kept> bringBack(Kept old, int version) {
        return add(old, version, false);
    }

    /** Takes the plan back; its versions stay. */
    public Optional<Kept> takeBack(Kept newest, int version) {
        return add(newest, version, true);
    }

    /** Adds the words of one version as the next. */
    private Optional<Kept> add(Kept words, int version, boolean takenBack) {
        Kept next = new Kept(
                words.prospect(),
                version + 1,
                words.request(),
                words.sheet(),
                words.by(),
                words.note(),
                words.film(),
                Writing.now(),
                takenBack);
        return store.keep(kept -> {
            int newest = kept.plans().of(next.prospect()).stream()
                    .findFirst()
                    .map(Kept::version)
                    .orElse(0);
            if (newest != version) {
                return Optional.<Kept>empty();
            }
            kept.plans().add(next);
            return Optional.of(next);
        });
    }
}
