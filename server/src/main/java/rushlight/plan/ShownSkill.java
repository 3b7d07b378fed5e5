package rushlight.plan;

import java.util.List;
import java.util.Optional;
import rushlight.evidence.Interval;
import rushlight.evidence.Line;
import rushlight.evidence.Rate;
import rushlight.evidence.Retest;
import rushlight.evidence.Side;
import rushlight.findings.Evidence;
import rushlight.findings.Finding;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.findings.Polarity;

/**
 * What film counts of a skill.
 *
 * @param judged the finding that counts it
 * @param good the chances in which it was there
 */
record ShownSkill(Judged judged, Rate good) {
    /** Empty where the finding is no rate, or has fewer chances than anything is said on. */
    static Optional<ShownSkill> of(Judged judged) {
        Rate rate = judged.outcome().rate();
        if (judged.finding().measure() != Measure.RATE || rate.opportunities() < Line.FLOOR) {
            return Optional.empty();
        }
        return Optional.of(new ShownSkill(judged, isBad(judged.finding()) ? rate.mirrored() : rate));
    }

    /** Whether these games would clear it, were it a gap put to the test again: nobody needs weeks for what would pass already. */
    boolean isGoodEnough() {
        List<Rate> games =
                judged.evidence().byGame().stream().map(Evidence.OfGame::rate).toList();
        return judged.verdict().settled()
                && judged.finding().standard().held().isPresent()
                && new Retest(
                                RetestTarget.line(judged.finding()),
                                judged.outcome().rate())
                        .clears(games);
    }

    /** Whether what a finding counts is what a coach does not want. */
    static boolean isBad(Finding finding) {
        boolean above = finding.standard().side().orElse(Side.ABOVE) == Side.ABOVE;
        return above != (finding.polarity() == Polarity.STRENGTH);
    }

    /** "31 of 60 good (52 %, likely range 41 to 62 %), by \"plays high\"." */
    String words() {
        Interval likely = good.jeffreys(Rate.SHOWN);
        return good.events() + " of " + good.opportunities() + " good ("
                + Math.round(100 * good.share().orElse(0)) + " %, likely range " + Math.round(100 * likely.low())
                + " to "
                + Math.round(100 * likely.high()) + " %), by \""
                + judged.finding().shown() + "\".";
    }
}
