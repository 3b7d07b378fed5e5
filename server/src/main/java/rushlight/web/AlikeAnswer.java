package rushlight.web;

import java.util.List;
import java.util.OptionalDouble;
import rushlight.evidence.Interval;
import rushlight.findings.SeenAlike;

/**
 * How far two evaluators see a finding alike.
 *
 * @param common reps that both call an opportunity
 * @param alike those among them on which both say the same of the event
 * @param coefficient {@code alpha} or {@code AC1}; empty under 30 common reps, or where one thing only was said
 * @param value of the coefficient, at most 1, with the ends of its likely range of 90 %
 * @param reps the common reps
 */
public record AlikeAnswer(
        int common,
        int alike,
        String coefficient,
        OptionalDouble value,
        OptionalDouble low,
        OptionalDouble high,
        List<SeenAlike.Twice> reps,
        String sentence) {
    static AlikeAnswer of(SeenAlike one) {
        return new AlikeAnswer(
                one.reps().size(),
                Math.toIntExact(one.alike()),
                one.name(),
                one.value(),
                AssessAnswer.end(one.likely().map(Interval::low)),
                AssessAnswer.end(one.likely().map(Interval::high)),
                one.reps(),
                one.sentence());
    }
}
