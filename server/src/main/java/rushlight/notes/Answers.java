package rushlight.notes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.words.Token;

/** What is answered to the questions of a stretch: "Did he rip? No." */
final class Answers {
    private static final String YES = "yes";
    private static final int FEW = 5;
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
                .filter(cue -> !cue.value().equals(YES) || isWhole(cue) || cue.end() - cue.first() > 1)
                .map(cue -> cue.value().equals(YES));
    }

    /**
     * Whether a few words are denied right behind the term they name: "bend, no."
     *
     * @param here where words of the clause mean a term
     */
    boolean denies(int clause, List<Terms.Place> here) {
        Clause own = clauses.get(clause);
        return !own.question()
                && own.end() - own.first() <= FEW
                && shown.of(clause).stream()
                        .anyMatch(cue -> cue.act() == Cues.Act.ANSWER
                                && !cue.value().equals(YES)
                                && cue.first() > own.first()
                                && cue.end() == own.end()
                                && isWhole(cue)
                                && here.stream().anyMatch(place -> place.end() == endBefore(cue)));
    }

    private int endBefore(Cues.Found cue) {
        return tokens.get(cue.first() - 1).word() ? cue.first() : cue.first() - 1;
    }

    /** "And now what? No answer.": nobody says yes or no to it. */
    private boolean asksWhat(Clause clause) {
        return tokens.subList(clause.first(), clause.end()).stream().anyMatch(token -> ASKING.contains(token.key()));
    }

    /** Whether a clause answers the one before it. */
    boolean isAnswer(int clause) {
        return clause > 0 && to(clause - 1).isPresent();
    }

    private boolean isWhole(Cues.Found cue) {
        return cue.end() >= tokens.size() || !tokens.get(cue.end()).word();
    }
}
