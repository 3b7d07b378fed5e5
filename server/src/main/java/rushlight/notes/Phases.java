package rushlight.notes;

import java.util.List;
import java.util.Set;
import rushlight.words.Match;
import rushlight.words.Token;

/** Which phase is spoken of round each clause: by terms of one phase whatever they mean there, and by a few plain words. */
final class Phases {
    private static final String RUSH = "pass-rush";
    private static final String RUN = "run";
    private static final int HERE = 3;
    private static final int OF_LINE = 2;
    private static final int BESIDE = 1;
    private static final int AROUND = 3;
    private static final Set<String> OF_RUSH = SmallWords.of("of-rush");
    private static final Set<String> OF_RUN = SmallWords.of("of-run");

    private final Terms terms;
    private final List<Clause> clauses;

    /** What speaks for a rush in each clause, less what speaks for a run. */
    private final int[] rush;

    Phases(Terms terms, List<Token> tokens, List<Clause> clauses, List<Match<Terms.Term>> matches) {
        this.terms = terms;
        this.clauses = clauses;
        rush = new int[clauses.size()];
        List<Terms.Place> clear = terms.best(
                tokens, matches.stream().filter(match -> of(match) != 0).toList());
        ByClause<Terms.Place> clearIn = ByClause.of(clauses, clear, Terms.Place::first);
        for (int i = 0; i < clauses.size(); i++) {
            for (Terms.Place place : clearIn.of(i)) {
                rush[i] += sign(place.terms().get(0));
            }
            for (Token token :
                    tokens.subList(clauses.get(i).first(), clauses.get(i).end())) {
                rush[i] += OF_RUSH.contains(token.key()) ? 1 : OF_RUN.contains(token.key()) ? -1 : 0;
            }
        }
    }

    /** {@code pass-rush}, {@code run}, or {@code none} where as much speaks for either. */
    String of(int clause) {
        int sum = rush[clause] * HERE;
        for (int i = Math.max(0, clause - AROUND); i < Math.min(rush.length, clause + AROUND + 1); i++) {
            boolean line = clauses.get(i).cue() == clauses.get(clause).cue();
            sum += rush[i] * (line ? OF_LINE : BESIDE);
        }
        return sum > 0 ? RUSH : sum < 0 ? RUN : "none";
    }

    /** 1 where all that the words may mean is of a rush, -1 of a run, else 0. */
    private int of(Match<Terms.Term> match) {
        List<Integer> signs = match.values().stream().map(this::sign).distinct().toList();
        return signs.size() == 1 ? signs.get(0) : 0;
    }

    private int sign(Terms.Term term) {
        String phase = terms.kinds().of(term.slug()).map(Kinds.Kind::phase).orElse("");
        return phase.equals(RUSH) ? 1 : phase.equals(RUN) ? -1 : 0;
    }
}
