package rushlight.notes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.words.Token;

/** What is answered to the questions of a stretch, "Did he rip? No.", or denied behind a single word: "Bend, no." */
final class Answers {
    private static final String YES = "yes";
    private static final int LEAD = 1;
    private static final Set<String> NO = SmallWords.of("flat-no");
    private static final Set<String> NOES = SmallWords.of("noes");
    private static final Set<String> ASKING = SmallWords.of("asking");

    private final List<Clause> clauses;
    private final ByClause<Cues.Found> shown;
    private final List<Token> tokens;

    Answers(List<Token> tokens, List<Clause> clauses, ByClause<Cues.Found> shown) {
        this.tokens = tokens;
        this.clauses = clauses;
        this.shown = shown;
    }

    /** Whether what a clause asks is so, by the first word behind it; none where it asks nothing, or nobody says. */
    Optional<Boolean> to(int clause) {
        int next = clause + 1;
        if (!clauses.get(clause).question() || next >= clauses.size() || asksWhat(clauses.get(clause))) {
            return Optional.empty();
        }
        Clause answer = clauses.get(next);
        return shown.of(next).stream()
                .filter(cue -> cue.act() == Cues.Act.ANSWER && cue.first() == answer.first())
                .max((a, b) -> Integer.compare(a.end(), b.end()))
                .filter(cue -> !cue.value().equals(YES) || isWhole(cue.end()) || cue.end() - cue.first() > 1)
                .map(cue -> cue.value().equals(YES));
    }

    /**
     * Whether a clause names one thing and denies it: "bend, no."
     *
     * @param here where words of the clause mean a term
     */
    boolean denies(int clause, List<Terms.Place> here) {
        Clause own = clauses.get(clause);
        int last = own.end() - 1;
        return !own.question()
                && here.size() == 1
                && last > own.first()
                && here.get(0).first() - own.first() <= LEAD
                && here.get(0).end() == (tokens.get(last - 1).word() ? last : last - 1)
                && !NOES.contains(tokens.get(here.get(0).first()).key())
                && NO.contains(tokens.get(last).key())
                && isWhole(own.end());
    }

    /** "And now what? No answer.": nobody says yes or no to it. */
    private boolean asksWhat(Clause clause) {
        return tokens.subList(clause.first(), clause.end()).stream().anyMatch(token -> ASKING.contains(token.key()));
    }

    /** Whether a clause answers the one before it. */
    boolean isAnswer(int clause) {
        return clause > 0 && to(clause - 1).isPresent();
    }

    /** Whether no word follows where words end. */
    private boolean isWhole(int end) {
        return end >= tokens.size() || !tokens.get(end).word();
    }
}
