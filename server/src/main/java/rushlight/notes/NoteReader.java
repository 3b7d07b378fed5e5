package rushlight.notes;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import rushlight.knowledge.Taxonomy;
import rushlight.words.Token;
import rushlight.words.Tokenizer;

/**
 * Reads notes into the reps they speak of: terms by the labels of one book, how they are meant by its word lists, and the
 * stretches of the notes by what opens a rep, looks again at one, or sums up. The same notes always read the same. Safe for
 * many threads.
 */
public final class NoteReader {
    private final Tokenizer tokenizer = Tokenizer.ofBook();
    private final Kinds kinds;
    private final Terms terms;
    private final Cues cues;

    private NoteReader(Taxonomy taxonomy) {
        this.kinds = new Kinds(taxonomy);
        this.terms = new Terms(taxonomy, tokenizer, kinds);
        this.cues = new Cues(tokenizer);
    }

    /** By the labels and word lists of a book. */
    public static NoteReader of(Taxonomy taxonomy) {
        return new NoteReader(taxonomy);
    }

    /** What the notes say; whatever they are, there is a reading. */
    public Notes read(Narration narration) {
        return read(narration, "");
    }

    /** The same, of a player whose name is known: where it stands, he acts. */
    public Notes read(Narration narration, String prospect) {
        List<Notes> pieces = new ArrayList<>();
        each(narration, prospect, pieces::add);
        return pieces.size() == 1 ? pieces.get(0) : Notes.joined(narration, pieces);
    }

    /**
     * Reads long notes piece by piece, so that only one piece is held: some 20,000 words, up to the next words that open a
     * rep. Reps are numbered on, places are those of the whole text, and what was wrong in the file comes with the first
     * piece. Shorter notes are one piece.
     */
    public void each(Narration narration, String prospect, Consumer<Notes> pieces) {
        each(
                narration.source(),
                narration.format(),
                prospect,
                narration.diagnostics(),
                pieces,
                narration.cues()::forEach);
    }

    /**
     * The same of a file that is read as it is needed: neither its cues nor its words are held longer than their piece.
     *
     * @param faults what was wrong in the file, which comes with the first piece
     */
    public void each(NoteFile file, String prospect, List<Diagnostic> faults, Consumer<Notes> pieces) {
        each(file.source(), file.format(), prospect, faults, pieces, file::each);
    }

    private void each(
            String source,
            Format format,
            String prospect,
            List<Diagnostic> faults,
            Consumer<Notes> pieces,
            Consumer<Consumer<Cue>> cuesOf) {
        Set<String> names = tokenizer.tokens(prospect).stream()
                .filter(token -> token.word() && token.key().length() > 2 && !terms.knows(token.key()))
                .map(Token::key)
                .collect(Collectors.toSet());
        StretchReader reader = new StretchReader(kinds, terms, cues, names);
        Iterator<List<Diagnostic>> first = List.of(faults).iterator();
        Stretches stretches = new Stretches(
                source,
                format,
                tokenizer,
                cues,
                stretch -> pieces.accept(reader.read(stretch, first.hasNext() ? first.next() : List.of())));
        cuesOf.accept(stretches::add);
        stretches.end();
    }

    /**
     * The reps of notes as a person left them; one without a tag is left out.
     *
     * @param openToo whether tags that nobody decided on stay in
     */
    public List<ReviewedRep> reviewed(Narration narration, Notes notes, Decisions decided, boolean openToo) {
        return new Reviewing(narration, decided, kinds, openToo).of(notes);
    }
}
