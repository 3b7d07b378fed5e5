package rushlight.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.film.Identity;
import rushlight.notes.Carrying;
import rushlight.notes.Decisions;
import rushlight.store.KeptDecisions;
import rushlight.store.Store;

/**
 * What people decided on notes, kept in a data folder by the name of the file. They are no film: no revision of it is
 * raised. Two files of one name that have little in common have a set each, so neither takes the other's decisions.
 */
public final class NotesDecisions {
    /** Files of one name are one file, corrected, where at least half of the tags of the shorter are in both. */
    private static final double SAME_FILE = 0.5;

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String UNNAMED = "notes";

    private final Store store;

    private NotesDecisions(Store store) {
        this.store = store;
    }

    /** Those of an open folder. */
    public static NotesDecisions of(Archive archive) {
        return new NotesDecisions(archive.store());
    }

    /**
     * Decisions with the tags of the file that they were made on.
     *
     * @param decided what was decided
     * @param outline the keys of the tags of each rep, and last of what was said in general
     */
    public record Review(Decisions decided, List<List<String>> outline) {
        public Review {
            outline = outline.stream().map(List::copyOf).toList();
        }
    }

    /** A kept set. */
    public record Kept(String id, String file, long version, Instant when, Review review) {}

    /**
     * The set of a file that was opened.
     *
     * @param id where its decisions are kept
     * @param version 0 where nothing is kept yet
     * @param when when it was kept; the beginning of time where nothing is
     * @param decided the decisions as they hold for the file as it is
     * @param others files of the same name that have decisions of their own
     */
    public record Found(String id, long version, Instant when, Decisions decided, int others) {}

    /** What became of keeping a set: what is kept now, and whether it is what was sent. */
    public record Put(boolean done, Optional<Kept> now) {}

    /** All sets. */
    public List<Kept> all() {
        return store.ask(data -> KeptDecisions.in(data).all()).stream()
                .map(NotesDecisions::kept)
                .toList();
    }

    /** The set of this id. */
    public Optional<Kept> one(String id) {
        return store.ask(data -> KeptDecisions.in(data).one(id)).map(NotesDecisions::kept);
    }

    /** What the set of this id was before, the newest first. */
    public List<Kept> before(String id) {
        return store.ask(data -> KeptDecisions.in(data).before(id)).stream()
                .map(NotesDecisions::kept)
                .toList();
    }

    /** What holds for a file of this name that proposes these tags. */
    public Found of(String file, List<List<String>> outline) {
        return among(all(), file, outline);
    }

    /** The same by sets that were read before. */
    public static Found among(List<Kept> all, String file, List<List<String>> outline) {
        List<Kept> named = all.stream().filter(one -> one.file().equals(file)).toList();
        Optional<Kept> same = named.stream()
                .filter(one -> likeness(one, outline) >= SAME_FILE)
                .max(Comparator.comparingDouble(one -> likeness(one, outline)));
        return same.map(one -> new Found(
                        one.id(),
                        one.version(),
                        one.when(),
                        Carrying.carried(one.review().decided(), one.review().outline(), outline),
                        named.size() - 1))
                .orElseGet(() -> new Found(free(file, all), 0, Instant.EPOCH, Decisions.NONE, named.size()));
    }

    private static double likeness(Kept one, List<List<String>> outline) {
        return Carrying.likeness(one.review().outline(), outline);
    }

    private static String free(String file, List<Kept> all) {
        Set<String> taken = all.stream().map(Kept::id).collect(Collectors.toSet());
        String slug = Identity.slug(file);
        String name = slug.isEmpty() ? UNNAMED : slug;
        String id = name;
        for (int n = 2; taken.contains(id); n++) {
            id = name + "-" + n;
        }
        return id;
    }

    /**
     * Keeps a set where nobody kept another version meanwhile.
     *
     * @param version the version it was made of; 0 for a new set
     */
    public Put put(String id, String file, long version, Review review) {
        String text = text(review);
        Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        return store.change(data -> {
            KeptDecisions sets = KeptDecisions.in(data);
            Optional<Kept> before = sets.one(id).map(NotesDecisions::kept);
            boolean fresh = before.map(Kept::version).orElse(0L) == version;
            if (fresh) {
                boolean loses = before.isPresent()
                        && review.decided().count() * 2
                                < before.get().review().decided().count();
                sets.put(new KeptDecisions.Kept(id, file, version + 1, now, text), loses);
            }
            return new Put(fresh, sets.one(id).map(NotesDecisions::kept));
        });
    }

    private static Kept kept(KeptDecisions.Kept set) {
        try {
            return new Kept(set.id(), set.file(), set.version(), set.when(), JSON.readValue(set.text(), Review.class));
        } catch (JsonProcessingException e) {
            throw new FolderException(
                    "The decisions kept on " + set.file() + " cannot be read: " + e.getOriginalMessage(), e);
        }
    }

    private static String text(Review review) {
        try {
            return JSON.writeValueAsString(review);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("Decisions that no JSON can hold.", e);
        }
    }
}
