package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
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

    private final Narration narration;
    private final Tokenizer tokenizer;
    private final Cues cues;
    private int next;
    private List<Token> ahead = List.of();

    Stretches(Narration narration, Tokenizer tokenizer, Cues cues) {
        this.narration = narration;
        this.tokenizer = tokenizer;
        this.cues = cues;
    }

    boolean hasNext() {
        return next < narration.cues().size();
    }

    /** The next stretch; an empty one of notes without cues. */
    Stretch next() {
        List<Token> tokens = new ArrayList<>(ahead);
        int first = next;
        next += ahead.isEmpty() ? 0 : 1;
        ahead = List.of();
        while (hasNext() && ahead.isEmpty()) {
            List<Token> own = tokens(narration.cues().get(next));
            if (!tokens.isEmpty() && (tokens.size() + own.size() > MOST || (tokens.size() > ENOUGH && opens(own)))) {
                ahead = own;
            } else {
                tokens.addAll(own);
                next++;
            }
        }
        Narration notes = new Narration(
                narration.source(),
                narration.format(),
                narration.cues().subList(first, next),
                narration.text(),
                List.of());
        return new Stretch(notes, tokens, !hasNext());
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
