package rushlight.notes;

import java.util.List;
import java.util.Set;
import rushlight.words.Match;
import rushlight.words.Token;

/** Which phase is spoken of round each clause: by terms that mean one thing wherever they stand, and by a few plain words. */
final class Phases {
    private static final String RUSH = "pass-rush";
    private static final String RUN = "run";
    private static final int HERE = 3;
    private static final int BESIDE = 1;
    private static final int AROUND = 3;
    private static final Set<String> OF_RUSH = SmallWords.of("of-rush");
    private static final Set<String> OF_RUN = SmallWords.of("of-run");

    /** What speaks for a rush in each clause, less what speaks for a run. */
    private final int[] rush;

    Phases(Terms terms, List<Token> tokens, List<Clause> clauses, List<Match<Terms.Term>> matches) {
        rush = new int[clauses.size()];
        List<Terms.Place> clear = terms.best(
                tokens,
                matches.stream()
                        .filter(match -> match.values().stream()
                                .allMatch(term -> term.sense().isAny()))
                        .toList());
        ByClause<Terms.Place> clearIn = ByClause.of(clauses, clear, Terms.Place::first);
        for (int i = 0; i < clauses.size(); i++) {
            for (Terms.Place place : clearIn.of(i)) {
                rush[i] += terms.kinds()
                        .of(place.terms().get(0).slug())
                        .map(kind -> sign(kind.phase()))
                        .orElse(0);
            }
            for (Token token : tokens.subList(clauses.get(i).first(), clauses.get(i).end())) {
                rush[i] += OF_RUSH.contains(token.key()) ? 1 : OF_RUN.contains(token.key()) ? -1 : 0;
            }
        }
    }

    /** {@code pass-rush}, {@code run}, or {@code none} where as much speaks for either. */
    String of(int clause) {
        int sum = rush[clause] * HERE;
        for (int i = Math.max(0, clause - AROUND); i < Math.min(rush.length, clause + AROUND + 1); i++) {
            sum += rush[i] * BESIDE;
        }
        return sum > 0 ? RUSH : sum < 0 ? RUN : "none";
    }

    private static int sign(String phase) {
        return phase.equals(RUSH) ? 1 : phase.equals(RUN) ? -1 : 0;
    }
}
