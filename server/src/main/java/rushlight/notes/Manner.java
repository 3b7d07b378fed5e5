package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rushlight.words.Token;

/** How notes are told: in a few words a line, or in long lines that each tell one thing; and how long the speaker is silent. */
final class Manner {
    private static final double WORDS_OF_TERSE = 6;
    private static final int WORDS_OF_PARAGRAPH = 14;
    private static final double MOST = 0.8;

    /** So many seconds after a line of a rep that is not over, nobody is at the next one. */
    private static final double AT_ONCE = 3;

    private final Narration notes;
    private final boolean terse;
    private final boolean paragraphs;
    private final double silence;

    Manner(Narration notes, List<Token> tokens) {
        this.notes = notes;
        long words = tokens.stream().filter(Token::word).count();
        this.terse = isTerse(words, tokens.stream().filter(Edges::ends).count());
        this.paragraphs = isInParagraphs(words);
        this.silence = silence();
    }

    /** Whether each line has a few words and its own rep. */
    boolean terse() {
        return terse;
    }

    /** Whether the lines are long and end with their sentences. */
    boolean paragraphs() {
        return paragraphs;
    }

    /** Whether the speaker was silent before a cue for longer than he is as a rule. */
    boolean isSilenceBefore(int cue) {
        return gap(cue) >= silence;
    }

    /** Whether a line was written right after the one before; lines without a time, or with the same, or an earlier one, are not. */
    boolean isAtOnce(int cue) {
        if (cue == 0) {
            return false;
        }
        OptionalDouble before = notes.cues().get(cue - 1).start();
        OptionalDouble now = notes.cues().get(cue).start();
        double gap = before.isPresent() && now.isPresent() ? now.getAsDouble() - before.getAsDouble() : 0;
        return gap > 0 && gap < AT_ONCE;
    }

    private boolean isTerse(long words, long ends) {
        return notes.cues().size() > 1 && words <= WORDS_OF_TERSE * ends;
    }

    private boolean isInParagraphs(long words) {
        int lines = notes.cues().size();
        long whole = notes.cues().stream()
                .map(Cue::text)
                .map(String::strip)
                .filter(text -> !text.isEmpty() && Edges.ends(text.charAt(text.length() - 1)))
                .count();
        return lines > 2 && words >= (long) WORDS_OF_PARAGRAPH * lines && whole >= MOST * lines;
    }

    private double silence() {
        List<Double> gaps = new ArrayList<>();
        for (int c = 1; c < notes.cues().size(); c++) {
            gaps.add(gap(c));
        }
        gaps.sort(Double::compare);
        double median = gaps.isEmpty() ? 0 : gaps.get(gaps.size() / 2);
        return Math.max(1, 3 * median);
    }

    private double gap(int cue) {
        Cue before = notes.cues().get(cue - 1);
        Cue now = notes.cues().get(cue);
        return before.end().isPresent() && now.start().isPresent()
                ? now.start().getAsDouble() - before.end().getAsDouble()
                : 0;
    }
}
