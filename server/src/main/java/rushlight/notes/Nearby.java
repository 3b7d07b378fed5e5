package rushlight.notes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.words.Token;

/** What stands right beside a term in its clause: a side, a hand, a word of praise or blame. */
final class Nearby {
    static final Set<String> LISTS = SmallWords.of("or");

    private static final int SIDE_AFTER = 3;
    private static final int SIDE_BEFORE = 2;
    private static final int OPINION_NEAR = 3;

    private final List<Token> tokens;
    private final List<Cues.Found> showing;

    Nearby(List<Token> tokens, List<Cues.Found> showing) {
        this.tokens = tokens;
        this.showing = showing;
    }

    /** The side or the hand. */
    Optional<String> of(Hit hit, Cues.Act act) {
        return showing.stream()
                .filter(cue -> cue.act() == act)
                .filter(cue -> (cue.first() >= hit.end()
                                && cue.first() - hit.end() < SIDE_AFTER
                                && !isCut(hit.end(), cue.first()))
                        || (cue.end() <= hit.first()
                                && hit.first() - cue.end() < SIDE_BEFORE
                                && !isCut(cue.end(), hit.first())))
                .map(Cues.Found::value)
                .findFirst();
    }

    /** From -2, strongly negative, to 2. */
    int opinion(Hit hit, Clause clause) {
        int sum = 0;
        for (Cues.Found cue : showing) {
            boolean near = clause.holds(cue.first())
                    && ((cue.end() <= hit.first() && hit.first() - cue.end() < 2)
                            || (cue.first() >= hit.end() && cue.first() - hit.end() < OPINION_NEAR));
            if (cue.act() == Cues.Act.OPINION && near) {
                sum += Integer.parseInt(cue.value());
            }
        }
        return Math.max(-2, Math.min(2, sum));
    }

    /** A comma ends what a word reaches, unless the list goes on with "or". */
    boolean isCut(int from, int to) {
        for (int i = from; i < to; i++) {
            boolean goesOn =
                    i + 1 < tokens.size() && LISTS.contains(tokens.get(i + 1).key());
            if (!tokens.get(i).word() && !goesOn && !tokens.get(i).text().equals(":")) {
                return true;
            }
        }
        return false;
    }
}
