package rushlight.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rushlight.words.Token;

/** Moves where stretches begin to where the speaker took breath for them: "okay, so | next one" is one. */
final class Edges {
    private static final String ENDS = ".!?;";
    private static final int BREATH = 6;
    private static final Set<String> HE = SmallWords.of("he");

    private final List<Token> tokens;
    private final List<Clause> clauses;
    private final List<List<Hit>> hits;
    private final ByClause<Cues.Found> him;

    Edges(List<Token> tokens, List<Clause> clauses, List<List<Hit>> hits, ByClause<Cues.Found> him) {
        this.tokens = tokens;
        this.clauses = clauses;
        this.hits = hits;
        this.him = him;
    }

    /** Whether a mark ends a sentence. */
    static boolean ends(Token token) {
        return !token.word() && ENDS.contains(token.text());
    }

    /** Whether a mark ends a sentence. */
    static boolean ends(char mark) {
        return ENDS.indexOf(mark) >= 0;
    }

    /** Whether a clause begins a sentence. */
    boolean isSentence(int clause) {
        Clause own = clauses.get(clause);
        return own.begins() || ends(tokens.get(own.first() - 1));
    }

    /** How many words of its sentence stand before a token. */
    int wordsBefore(int token) {
        int words = 0;
        for (int i = token - 1;
                i >= 0 && !ends(tokens.get(i)) && !tokens.get(i).text().equals("\n");
                i--) {
            words += tokens.get(i).word() ? 1 : 0;
        }
        return words;
    }

    /**
     * The parts as they stand in the end.
     *
     * @param before how many reps were told before these
     * @param counted whether the first rep was opened by its number, so that nothing before it can belong to it
     */
    List<Segmenter.Part> settled(List<Segmenter.Part> parts, int before, boolean counted) {
        List<Segmenter.Part> settled = new ArrayList<>(parts);
        for (int i = 1; i < settled.size(); i++) {
            if (!settled.get(i).equals(settled.get(i - 1)) && settled.get(i).kind() != Segment.Kind.CHATTER) {
                back(settled, i);
            }
        }
        begin(settled, counted);
        return numbered(settled, before);
    }

    /** With no number left out where a rep gave all its words to the next. */
    private static List<Segmenter.Part> numbered(List<Segmenter.Part> parts, int before) {
        Map<Integer, Integer> numbers = new TreeMap<>();
        parts.stream().filter(part -> part.rep() > 0).forEach(part -> numbers.put(part.rep(), 0));
        int next = before + 1;
        for (Map.Entry<Integer, Integer> entry : numbers.entrySet()) {
            entry.setValue(next++);
        }
        return parts.stream()
                .map(part -> part.rep() == 0
                        ? part
                        : new Segmenter.Part(part.kind(), numbers.getOrDefault(part.rep(), part.rep())))
                .toList();
    }

    /** Words before it in the same sentence, few and of nothing, belong to what follows them. */
    private void back(List<Segmenter.Part> parts, int at) {
        int words = 0;
        for (int i = at - 1; i >= 0 && !isSentence(i + 1) && hits.get(i).isEmpty(); i--) {
            words += clauses.get(i).end() - clauses.get(i).first();
            if (words > BREATH) {
                return;
            }
            if (isSentence(i) || clauses.get(i).spoken()) {
                for (int j = i; j < at; j++) {
                    parts.set(j, parts.get(at));
                }
            }
        }
    }

    /** What leads up to the first rep in its line, or speaks of him before it, belongs to it. */
    private void begin(List<Segmenter.Part> parts, boolean counted) {
        int at = 0;
        while (at < parts.size() && parts.get(at).kind() == Segment.Kind.CHATTER) {
            at++;
        }
        if (at == parts.size() || parts.get(at).kind() != Segment.Kind.REP) {
            return;
        }
        int cue = clauses.get(at).cue();
        for (int i = at - 1; i >= 0 && (clauses.get(i).cue() == cue || (!counted && speaksOfHim(i))); i--) {
            parts.set(i, parts.get(at));
        }
    }

    private boolean speaksOfHim(int clause) {
        return him.of(clause).stream()
                .anyMatch(name -> HE.contains(tokens.get(name.first()).key()));
    }
}
