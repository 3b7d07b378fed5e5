package rushlight.archive;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.film.Projection;
import rushlight.store.KeptProjections;
import rushlight.store.KeptProjections.Kept;
import rushlight.store.Store;

/**
 * What evaluators think players will be, kept in a data folder: one projection for each evaluator and prospect, with every
 * version it ever had. It is no film and changes no count.
 */
public final class Projections {
    private final Store store;

    private Projections(Store store) {
        this.store = store;
    }

    /** Those of an open folder. */
    public static Projections of(Archive archive) {
        return new Projections(archive.store());
    }

    /**
     * What came of a change.
     *
     * @param done whether it was made; it is not where the version that was changed is not the newest
     * @param now the newest version after it; empty where there never was one
     */
    public record Result(boolean done, Optional<Kept> now) {}

    /** What stands of one prospect, by evaluator. */
    public List<Kept> of(String prospect) {
        List<Kept> newest = new ArrayList<>();
        for (Kept one : all(prospect)) {
            if (newest.isEmpty()
                    || !newest.get(newest.size() - 1)
                            .projection()
                            .by()
                            .equals(one.projection().by())) {
                newest.add(one);
            }
        }
        return newest.stream().filter(one -> !one.takenBack()).toList();
    }

    /** Every version of one evaluator's, the newest first; empty where he never had one. */
    public List<Kept> history(String prospect, String evaluator) {
        return all(prospect).stream()
                .filter(one -> one.projection().by().equals(evaluator))
                .toList();
    }

    /** How often any of them changed. */
    public long revision() {
        return store.ask(data -> KeptProjections.in(data).revision());
    }

    /**
     * Keeps a projection as the next version.
     *
     * @param version the one it changes; 0 where there is none yet
     */
    public Result keep(Projection projection, int version) {
        return add(projection, version, false);
    }

    /** Takes an evaluator's projection back; its versions stay, and keeping one of them again brings it back. */
    public Result takeBack(String prospect, String evaluator, int version) {
        List<Kept> history = history(prospect, evaluator);
        if (history.isEmpty() || history.get(0).takenBack()) {
            return new Result(false, Optional.empty());
        }
        return add(history.get(0).projection(), version, true);
    }

    private Result add(Projection projection, int version, boolean takenBack) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        return store.keep(kept -> {
            Optional<Kept> newest = kept.projections().of(projection.prospect()).stream()
                    .filter(one -> one.projection().by().equals(projection.by()))
                    .findFirst();
            if (newest.map(Kept::version).orElse(0) != version) {
                return new Result(false, newest);
            }
            Kept next = new Kept(projection, version + 1, now, takenBack);
            kept.projections().add(next);
            return new Result(true, Optional.of(next));
        });
    }

    private List<Kept> all(String prospect) {
        return store.ask(data -> KeptProjections.in(data).of(prospect));
    }
}
