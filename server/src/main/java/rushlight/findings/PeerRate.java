package rushlight.findings;

import java.util.Optional;
import rushlight.evidence.BetaBinomial;
import rushlight.evidence.Rate;

/**
 * A rate of one prospect beside those of the men of his position group; it changes no verdict.
 *
 * @param group the group, of several men; empty where his position is not on file
 * @param others the men of the group on file, himself left out
 * @param telling those among them with enough chances of it to say something
 * @param spread how their rates are spread; empty where too few tell
 * @param guess what his rate is best guessed at; empty where too few tell
 * @param sentence what a person reads
 */
public record PeerRate(
        String group,
        int others,
        int telling,
        Optional<BetaBinomial> spread,
        Optional<BetaBinomial.Shrunken> guess,
        String sentence) {
    static PeerRate ofNobody() {
        return new PeerRate(
                "",
                0,
                0,
                Optional.empty(),
                Optional.empty(),
                "His position is not on file, so there is nobody to read him beside.");
    }

    static PeerRate of(String group, int others, int telling, Optional<BetaBinomial> spread, Rate own) {
        Optional<BetaBinomial.Shrunken> guess = spread.map(one -> one.shrink(own));
        String said = guess.map(found -> guessed(group, telling, spread.orElseThrow(), found, own))
                .orElseGet(
                        () -> "Too few peers to read him beside: " + telling + " of the " + others + " other " + group
                                + " on file " + (telling == 1 ? "has " : "have ") + BetaBinomial.EACH
                                + " chances or more, and it takes " + BetaBinomial.PEERS + ".");
        return new PeerRate(group, others, telling, spread, guess, said);
    }

    private static String guessed(
            String group, int telling, BetaBinomial spread, BetaBinomial.Shrunken guess, Rate own) {
        String his = own.opportunities() == 0
                ? "with no chance of his own"
                : own.opportunities() < BetaBinomial.EACH ? "with so few reps" : "with his " + counted(own);
        return "Among the " + telling + " other " + group + " on file with " + BetaBinomial.EACH
                + " chances or more, who average " + Sentences.percent(spread.mean()) + ": " + his
                + " his true rate is best guessed at " + Sentences.percent(guess.mean()) + " (likely range "
                + Math.round(100 * guess.likely().low()) + " to "
                + Sentences.percent(guess.likely().high()) + ").";
    }

    private static String counted(Rate own) {
        return own.events() + " of " + own.opportunities();
    }
}
