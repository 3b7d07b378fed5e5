package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import rushlight.words.Token;
import rushlight.words.Tokenizer;

/** Cuts notes into stretches to be read one after the other: before words that open a rep, so that no rep is cut. */
final class Stretches {
    /** So many words and marks make a stretch; the next words that open a rep end it. */
    private static final int ENOUGH = 24_000;

    /** Notes that never open a rep are cut here all the same. */
    private static final int MOST = 48_000;

    private static final int LEADS = 3;

    /** A stretch: its cues, with their places in the whole text, its words, and whether it is the last. */
    record Stretch(Narration notes, List<Token> tokens, boolean last) {}

    private final String source;
    private final Format format;
    private final Tokenizer tokenizer;
    private final Cues cues;
    private final Consumer<Stretch> use;
    private List<Cue> own = new ArrayList<>();
    private List<Token> tokens = new ArrayList<>();

    /**
     * @param source name of the file
     * @param use takes each stretch as soon as it is whole
     */
    Stretches(String source, Format format, Tokenizer tokenizer, Cues cues, Consumer<Stretch> use) {
        this.source = source;
        this.format = format;
        this.tokenizer = tokenizer;
        this.cues = cues;
        this.use = use;
    }

    /** The next cue of the file. */
    void add(Cue cue) {
        List<Token> words = tokens(cue);
        boolean full = tokens.size() + words.size() > MOST || (tokens.size() > ENOUGH && opens(words));
        if (!tokens.isEmpty() && full) {
            hand(false);
        }
        own.add(cue);
        tokens.addAll(words);
    }

    /** There are no more; of notes without cues there is one empty stretch. */
    void end() {
        hand(true);
    }

    private void hand(boolean last) {
        String text = own.stream().map(Cue::text).collect(Collectors.joining("\n"));
        use.accept(new Stretch(new Narration(source, format, own, text, List.of()), tokens, last));
        own = new ArrayList<>();
        tokens = new ArrayList<>();
    }

    private boolean opens(List<Token> tokens) {
        return cues.parting(tokens).stream().anyMatch(cue -> cue.act() == Cues.Act.BOUNDARY && cue.first() < LEADS);
    }

    /** The words and marks of a cue; where it ends stands a mark, so that nothing is read across. */
    private List<Token> tokens(Cue cue) {
        List<Token> own = new ArrayList<>();
        for (Token token : tokenizer.tokens(cue.text())) {
            own.add(new Token(
                    token.text(),
                    token.key(),
                    token.from() + cue.from(),
                    token.to() + cue.from(),
                    token.word(),
                    token.repaired()));
        }
        own.add(new Token("\n", "\n", cue.to(), cue.to(), false, false));
        return own;
    }
}
