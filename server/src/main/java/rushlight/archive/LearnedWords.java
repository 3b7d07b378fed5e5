package rushlight.archive;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rushlight.knowledge.Taxonomy;
import rushlight.notes.Learned;
import rushlight.notes.Mention;
import rushlight.notes.Narrations;
import rushlight.notes.NoteReader;
import rushlight.notes.Notes;
import rushlight.store.KeptIgnored;
import rushlight.words.Lexicon;

/**
 * What the kept decisions on notes teach, and what a person does with it: words that were tagged by hand become a name of
 * the staff's own, or are ignored; either can be taken back. Nothing is taken that no person took.
 */
public final class LearnedWords {
    private static final int LONGEST = 60;

    private final Archive archive;
    private final OverlayNames names;

    private LearnedWords(Archive archive) {
        this.archive = archive;
        this.names = new OverlayNames(archive.folder());
    }

    /** Those of an open folder. */
    public static LearnedWords of(Archive archive) {
        return new LearnedWords(archive);
    }

    /** What a person has done with a suggestion. */
    public enum State {
        OPEN,
        TAKEN,
        IGNORED
    }

    /**
     * A suggestion.
     *
     * @param readAs the concepts that the words alone are read as now
     */
    public record Suggestion(Learned learned, State state, List<String> readAs) {
        public Suggestion {
            readAs = List.copyOf(readAs);
        }
    }

    /** What became of a wish. */
    public sealed interface Outcome {
        /**
         * It was done.
         *
         * @param said what was done, as a sentence
         * @param notes what is worth knowing beside
         */
        record Done(String said, List<String> notes) implements Outcome {}

        /** Nothing was changed. */
        record Refused(List<String> reasons) implements Outcome {}

        /** There is no such suggestion. */
        record Unknown() implements Outcome {}
    }

    /** Every suggestion; words that the program reads so by now, whoever taught it, want no name. */
    public List<Suggestion> all() {
        Set<String> ignored = archive.store().ask(data -> KeptIgnored.in(data).all());
        NoteReader reader = archive.book().notes();
        return Learned.of(sources()).stream()
                .map(learned -> suggestion(learned, ignored, reader))
                .filter(one -> one.learned().kind() == Learned.Kind.WARNING
                        || one.state() != State.OPEN
                        || !one.readAs().contains(one.learned().concept()))
                .toList();
    }

    private List<Learned.Source> sources() {
        return NotesDecisions.of(archive).all().stream()
                .map(kept -> new Learned.Source(
                        kept.id(),
                        kept.file(),
                        kept.review().decided(),
                        kept.review().outline()))
                .toList();
    }

    private Suggestion suggestion(Learned learned, Set<String> ignored, NoteReader reader) {
        boolean taken = learned.kind() == Learned.Kind.NAME && names.has(name(learned));
        State state = taken ? State.TAKEN : ignored.contains(learned.key()) ? State.IGNORED : State.OPEN;
        return new Suggestion(learned, state, readAs(reader, learned.words()));
    }

    /** Takes the words as a name of the concept: notes that are read from now on know it. */
    public synchronized Outcome take(String key) {
        Optional<Suggestion> found = find(key);
        if (found.isEmpty()) {
            return new Outcome.Unknown();
        }
        Learned learned = found.get().learned();
        if (found.get().state() == State.TAKEN) {
            return new Outcome.Done("\"" + learned.words() + "\" was taken already.", List.of());
        }
        Optional<String> unfit = unfit(learned);
        if (unfit.isPresent()) {
            return new Outcome.Refused(List.of(unfit.get()));
        }
        OverlayNames.Written written = names.add(name(learned), trial -> unread(trial, learned));
        if (!written.reasons().isEmpty()) {
            return new Outcome.Refused(written.reasons());
        }
        unignore(learned.key());
        archive.book().readNamesAgain(archive.folder());
        return new Outcome.Done(
                "\"" + learned.words() + "\" is a name of " + label(learned) + " from now on: notes read it so.",
                written.notes());
    }

    /** Lets nobody be asked about it again. */
    public synchronized Outcome ignore(String key) {
        Optional<Suggestion> found = find(key);
        if (found.isEmpty()) {
            return new Outcome.Unknown();
        }
        Learned learned = found.get().learned();
        if (found.get().state() == State.TAKEN) {
            return new Outcome.Refused(List.of("\"" + learned.words() + "\" is a name of " + label(learned)
                    + " already. Bring it back first: then it is none."));
        }
        archive.store().change(data -> {
            KeptIgnored.in(data).put(learned.key(), Writing.now());
            return true;
        });
        return new Outcome.Done("\"" + learned.words() + "\" is ignored.", List.of());
    }

    /** Makes it a suggestion again: a name that was taken is one no more, what was ignored is shown. */
    public synchronized Outcome bringBack(String key) {
        Optional<Suggestion> found = find(key);
        if (found.isEmpty()) {
            return new Outcome.Unknown();
        }
        Learned learned = found.get().learned();
        if (found.get().state() == State.TAKEN) {
            OverlayNames.Written written = names.remove(name(learned));
            if (!written.reasons().isEmpty()) {
                return new Outcome.Refused(written.reasons());
            }
            archive.book().readNamesAgain(archive.folder());
            return new Outcome.Done(
                    "\"" + learned.words() + "\" is a name of " + label(learned) + " no more.", written.notes());
        }
        unignore(learned.key());
        return new Outcome.Done("\"" + learned.words() + "\" is suggested again.", List.of());
    }

    private void unignore(String key) {
        archive.store().keep(kept -> kept.remove(KeptIgnored.KIND, key));
    }

    private Optional<Suggestion> find(String key) {
        return all().stream().filter(one -> one.learned().key().equals(key)).findFirst();
    }

    private static OverlayNames.Name name(Learned learned) {
        return new OverlayNames.Name(learned.concept(), learned.words());
    }

    private String label(Learned learned) {
        return archive.book().taxonomy().shown(learned.concept());
    }

    /** Why words are no name, whatever stands in the file. */
    private Optional<String> unfit(Learned learned) {
        String words = "\"" + learned.words() + "\"";
        if (learned.kind() == Learned.Kind.WARNING) {
            return Optional.of("This is a warning, no name: " + words + " was taken for " + label(learned)
                    + " in vain. Look at the places; if it always is, ignore it or take the name out where it stands.");
        }
        if (learned.words().length() > LONGEST) {
            return Optional.of(words + " is too long for a name. Mark fewer words the next time.");
        }
        Set<String> small = Lexicon.named("small-words", "word", "weight").rows().stream()
                .map(row -> row.get(0))
                .collect(Collectors.toSet());
        boolean nothing =
                Stream.of(learned.words().split(" ", -1)).allMatch(word -> small.contains(word) || word.length() < 2);
        return nothing
                ? Optional.of(words + " would be heard everywhere. Mark a word that says what he did.")
                : Optional.empty();
    }

    /** Why a folder with the name in it still would not read the words so. */
    private Optional<String> unread(Path trial, Learned learned) {
        NoteReader reader = NoteReader.of(Taxonomy.of(Book.ontology(trial)));
        List<String> readAs = readAs(reader, learned.words());
        if (readAs.contains(learned.concept())) {
            return Optional.empty();
        }
        String name = "\"" + learned.words() + "\" would not be read as " + label(learned);
        return Optional.of(
                readAs.isEmpty()
                        ? name + ": notes look for no such terms, or the words are set aside for another sense."
                        : name + ": the book reads it as "
                                + String.join(
                                        " and ",
                                        readAs.stream()
                                                .map(archive.book().taxonomy()::shown)
                                                .toList())
                                + ". Mark more of the words, so that they say only this.");
    }

    private static List<String> readAs(NoteReader reader, String words) {
        Notes alone = read(reader, words);
        Notes told = read(reader, "He " + words);
        return Stream.of(alone, told)
                .flatMap(notes -> Stream.concat(
                        notes.reps().stream().flatMap(rep -> rep.tags().stream()), notes.statements().stream()))
                .map(Mention::concept)
                .distinct()
                .toList();
    }

    private static Notes read(NoteReader reader, String words) {
        return reader.read(Narrations.read("words", (words + ".\n").getBytes(StandardCharsets.UTF_8)));
    }
}
