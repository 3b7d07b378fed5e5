package rushlight.archive;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import rushlight.store.KeptPlans;
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
     * One version.
     *
     * @param version counted from 1
     * @param request what it was asked for with, as it was written
     * @param sheet the plan, as it was written
     * @param by who kept it; may be empty
     * @param note why; may be empty
     * @param film the revision of the film it was made from
     * @param when when it was kept
     * @param takenBack whether this version says that there is none any more; its words are those before
     */
    public record Kept(
            int version,
            String request,
            String sheet,
            String by,
            String note,
            long film,
            Instant when,
            boolean takenBack) {
        private static Kept of(KeptPlans.Kept one) {
            return new Kept(
                    one.version(),
                    one.request(),
                    one.sheet(),
                    one.by(),
                    one.note(),
                    one.film(),
                    one.when(),
                    one.takenBack());
        }
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
        return store.ask(
                data -> KeptPlans.in(data).of(prospect).stream().map(Kept::of).toList());
    }

    /**
     * Keeps a plan as the next version.
     *
     * @param version the one it changes; 0 where there is none yet
     * @return what stands now; empty, and nothing kept, where another version is the newest
     */
    public Optional<Kept> keep(String prospect, Written written, int version) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        long film = store.revision();
        return add(
                prospect,
                version,
                new Kept(
                        version + 1,
                        written.request(),
                        written.sheet(),
                        written.by(),
                        written.note(),
                        film,
                        now,
                        false));
    }

    /**
     * Makes an earlier version stand again, as the next one.
     *
     * @param old the version to bring back
     * @param version the one it changes
     */
    public Optional<Kept> bringBack(String prospect, Kept old, int version) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        return add(
                prospect,
                version,
                new Kept(version + 1, old.request(), old.sheet(), old.by(), old.note(), old.film(), now, false));
    }

    /** Takes the plan back; its versions stay. */
    public Optional<Kept> takeBack(String prospect, Kept newest, int version) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        return add(
                prospect,
                version,
                new Kept(
                        version + 1,
                        newest.request(),
                        newest.sheet(),
                        newest.by(),
                        newest.note(),
                        newest.film(),
                        now,
                        true));
    }

    private Optional<Kept> add(String prospect, int version, Kept next) {
        return store.keep(kept -> {
            int newest = kept.plans().of(prospect).stream()
                    .findFirst()
                    .map(KeptPlans.Kept::version)
                    .orElse(0);
            if (newest != version) {
                return Optional.<Kept>empty();
            }
            kept.plans()
                    .add(new KeptPlans.Kept(
                            prospect,
                            next.version(),
                            next.request(),
                            next.sheet(),
                            next.by(),
                            next.note(),
                            next.film(),
                            next.when(),
                            next.takenBack()));
            return Optional.of(next);
        });
    }
}
