package rushlight.notes;

import java.util.List;
import java.util.Set;
import rushlight.words.Token;

/** Where some words of a clause stand; looked through only as far as a test asks. */
final class Surroundings {
    private static final int BESIDE = 2;
    private static final int ROUND = 20;
    private static final String DOING = "ing";
    private static final Set<String> WEIGHTLESS = SmallWords.of("weightless");

    private final List<Token> tokens;
    private final List<String> bases;
    private final Clause clause;
    private final int first;
    private final int end;
    private final String subject;
    private final String phase;

    /**
     * @param bases the base of each token; empty where it is no word
     * @param first the first token of the words
     * @param end the token behind them
     * @param subject who acts there: {@code blocker}, {@code other}, {@code prospect}, {@code pronoun}, or {@code nobody} named
     * @param phase what is told round about: {@code pass-rush}, {@code run} or {@code none}
     */
    Surroundings(
            List<Token> tokens, List<String> bases, Clause clause, int first, int end, String subject, String phase) {
        this.tokens = tokens;
        this.bases = bases;
        this.clause = clause;
        this.first = first;
        this.end = end;
        this.subject = subject;
        this.phase = phase;
    }

    String subject() {
        return subject;
    }

    String phase() {
        return phase;
    }

    /** Whether one of these stands right behind the words in the clause. */
    boolean next(Set<String> words) {
        return any(end, Math.min(clause.end(), end + BESIDE), words);
    }

    /** Whether one of these stands right before the words in the clause. */
    boolean previous(Set<String> words) {
        return any(Math.max(clause.first(), first - BESIDE), first, words);
    }

    /** Whether one of these stands anywhere else in the clause. */
    boolean near(Set<String> words) {
        return any(clause.first(), first, words) || any(end, clause.end(), words);
    }

    /** Whether one of these is among the words. */
    boolean has(Set<String> words) {
        return any(first, end, words);
    }

    /** Whether one of these is among the words in this very form. */
    boolean said(Set<String> forms) {
        return tokens.subList(first, end).stream().anyMatch(token -> forms.contains(token.key()));
    }

    /** Whether one of these stands among the words or some way before or after them. */
    boolean round(Set<String> words) {
        return any(Math.max(0, first - ROUND), Math.min(tokens.size(), end + ROUND), words);
    }

    /** Whether the clause holds no other words. */
    boolean alone() {
        return isSilent(clause.first(), first) && isSilent(end, clause.end());
    }

    boolean begins() {
        return first == clause.first();
    }

    /** Whether no word of weight stands beside them between two marks. */
    boolean apart() {
        int from = first;
        while (from > clause.first() && tokens.get(from - 1).word()) {
            from--;
        }
        int to = end;
        while (to < clause.end() && tokens.get(to).word()) {
            to++;
        }
        return isWeightless(from, first) && isWeightless(end, to);
    }

    /** Whether one of them is a verb in its "-ing" form: "is turning" is not "is turned". */
    boolean doing() {
        for (int i = first; i < end; i++) {
            String key = tokens.get(i).key();
            if (key.endsWith(DOING) && !bases.get(i).equals(key)) {
                return true;
            }
        }
        return false;
    }

    private boolean any(int from, int to, Set<String> words) {
        for (int i = from; i < to; i++) {
            if (words.contains(bases.get(i))) {
                return true;
            }
        }
        return false;
    }

    private boolean isSilent(int from, int to) {
        for (int i = from; i < to; i++) {
            if (tokens.get(i).word()) {
                return false;
            }
        }
        return true;
    }

    private boolean isWeightless(int from, int to) {
        for (int i = from; i < to; i++) {
            if (!WEIGHTLESS.contains(tokens.get(i).key())) {
                return false;
            }
        }
        return true;
    }
}
