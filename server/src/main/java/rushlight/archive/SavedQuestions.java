package rushlight.archive;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rushlight.ask.SavedQuestion;
import rushlight.film.Identity;
import rushlight.store.KeptThings;
import rushlight.store.Store;

/** The questions that are kept in a data folder under a name. They are no film: keeping one changes no revision. */
public final class SavedQuestions {
    private static final String KIND = "question";

    private final Store store;

    private SavedQuestions(Store store) {
        this.store = store;
    }

    /** Those of an open folder. */
    public static SavedQuestions of(Archive archive) {
        return new SavedQuestions(archive.store());
    }

    /** All of them, by name. */
    public List<SavedQuestion> all() {
        return store.ask(data -> KeptThings.in(data).all(KIND)).stream()
                .map(SavedQuestions::question)
                .sorted(Comparator.comparing(SavedQuestion::name))
                .toList();
    }

    /** The one of this name; capitals and hyphens do not matter. */
    public Optional<SavedQuestion> named(String name) {
        String id = Identity.slug(name);
        return all().stream()
                .filter(one -> Identity.slug(one.name()).equals(id))
                .findFirst();
    }

    /**
     * Keeps a question in place of what was kept under its name.
     *
     * @throws IllegalArgumentException where the name has neither letter nor digit
     */
    public SavedQuestion save(String name, String question, String note) {
        String id = Identity.slug(name);
        if (id.isEmpty()) {
            throw new IllegalArgumentException("The name \"" + name + "\" needs a letter or a digit.");
        }
        Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
        store.keep(kept -> {
            kept.put(new KeptThings.Kept(KIND, id, name.strip(), question, note, now));
            return id;
        });
        return new SavedQuestion(name.strip(), question, note, now);
    }

    /** Forgets the one of this name; whether there was one. */
    public boolean forget(String name) {
        return store.keep(kept -> kept.remove(KIND, Identity.slug(name)));
    }

    private static SavedQuestion question(KeptThings.Kept kept) {
        return new SavedQuestion(kept.name(), kept.text(), kept.note(), kept.when());
    }
}
