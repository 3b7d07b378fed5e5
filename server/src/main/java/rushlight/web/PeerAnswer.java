package rushlight.web;

import java.util.OptionalDouble;
import rushlight.evidence.BetaBinomial;
import rushlight.findings.PeerRate;

/**
 * A rate beside those of the men of his position group; no verdict hangs on it.
 *
 * @param group of several men; empty where his position is not on file
 * @param others men of the group on file, himself left out
 * @param telling those among them with enough chances to say something
 * @param needed how many of those it takes
 * @param middle the middle of the group, 0 to 1; null where too few tell
 * @param guess what his own rate is best guessed at, with its likely range; null where too few tell
 */
public record PeerAnswer(
        String group,
        int others,
        int telling,
        int needed,
        OptionalDouble middle,
        OptionalDouble guess,
        OptionalDouble low,
        OptionalDouble high,
        String sentence) {
    static PeerAnswer of(PeerRate rate) {
        return new PeerAnswer(
                rate.group(),
                rate.others(),
                rate.telling(),
                BetaBinomial.PEERS,
                AssessAnswer.end(rate.spread().map(BetaBinomial::mean)),
                AssessAnswer.end(rate.guess().map(BetaBinomial.Shrunken::mean)),
                AssessAnswer.end(rate.guess().map(one -> one.likely().low())),
                AssessAnswer.end(rate.guess().map(one -> one.likely().high())),
                rate.sentence());
    }
}
