package rushlight.archive;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import rushlight.film.Identity;
import rushlight.film.Opinion;
import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.findings.Spoken;
import rushlight.store.KeptOpinions;
import rushlight.store.Store;

/**
 * What people said of players, kept in a data folder. It is no film and changes no count: keeping an opinion, or taking one
 * back, raises no revision of the film.
 */
public final class Opinions {
    private final Book book;
    private final Store store;

    private Opinions(Book book, Store store) {
        this.book = book;
        this.store = store;
    }

    /** Those of an open folder. */
    public static Opinions of(Archive archive) {
        return new Opinions(archive.book(), archive.store());
    }

    /** What people said of the player of an assessment, beside it. */
    public Spoken beside(Assessment assessment) {
        return book.opinions().beside(assessment, of(assessment.prospect().id()));
    }

    /** The id of the player with this name or id; one that is not known yet gets the id his film will have. */
    public String prospect(String name) {
        String asked = name.strip();
        return store.prospects().stream()
                .filter(one -> one.id().equals(asked) || one.name().equalsIgnoreCase(asked))
                .map(Prospect::id)
                .findFirst()
                .orElseGet(() -> Identity.slug(asked));
    }

    /** What stands of one player, in the order of the file and the time it was said. */
    public List<Opinion> of(String prospect) {
        return store.ask(data -> KeptOpinions.in(data).all()).stream()
                .filter(one ->
                        one.takenBack().isEmpty() && one.opinion().prospect().equals(prospect))
                .map(KeptOpinions.Kept::opinion)
                .toList();
    }

    /** How often any of them changed. */
    public long revision() {
        return store.ask(data -> KeptOpinions.in(data).revision());
    }

    /** Keeps opinions, each in place of the same one. */
    public void keep(List<Opinion> opinions) {
        Instant now = now();
        store.keep(kept -> {
            opinions.forEach(one -> kept.opinions().put(new KeptOpinions.Kept(one, now, Optional.empty())));
            return opinions.size();
        });
    }

    /** Takes one back; empty where there is none of this id. */
    public Optional<Opinion> takeBack(String id) {
        return set(id, Optional.of(now()));
    }

    /** Brings one back that was taken back; empty where there is none of this id. */
    public Optional<Opinion> bringBack(String id) {
        return set(id, Optional.empty());
    }

    private Optional<Opinion> set(String id, Optional<Instant> takenBack) {
        return store.keep(kept -> {
            Optional<KeptOpinions.Kept> found = kept.opinions().all().stream()
                    .filter(one -> one.opinion().id().equals(id))
                    .findFirst();
            found.ifPresent(one -> kept.opinions().put(new KeptOpinions.Kept(one.opinion(), one.kept(), takenBack)));
            return found.map(KeptOpinions.Kept::opinion);
        });
    }

    private static Instant now() {
        return Instant.now().truncatedTo(ChronoUnit.MILLIS);
    }
}
