package rushlight.web;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.evidence.Interval;
import rushlight.findings.Outcome;
import rushlight.findings.RoleFit;

/**
 * A job on a front held against one prospect's film, as programs read it.
 *
 * @param role slug of the job
 * @param label its name for people
 * @param fit {@code shown} where all that is required is shown, {@code not-shown} where something required has chances enough
 *     and is not, else {@code no-tape}
 * @param required what film must show for it
 * @param preferred what would be welcome
 * @param summary what a person reads; it never says that he cannot
 * @param local whether the user's own file added the role
 */
public record RoleAnswer(
        String role,
        String label,
        String fit,
        List<Need> required,
        List<Need> preferred,
        String summary,
        boolean local) {
    /**
     * One thing it asks for.
     *
     * @param asked slug of the finding or the task
     * @param label its name for people
     * @param without whether it is a gap, shown by being cleared
     * @param shown {@code shown}, {@code not-shown} or {@code no-tape}
     * @param reps the opportunities, as for a finding
     */
    public record Need(
            String asked,
            String label,
            boolean without,
            String shown,
            String verdict,
            int opportunities,
            int events,
            int games,
            OptionalDouble rate,
            OptionalDouble low,
            OptionalDouble high,
            OptionalDouble line,
            OptionalInt moreNeeded,
            String sentence,
            List<AssessAnswer.Rep> reps) {}

    static RoleAnswer of(RoleFit fit, boolean withReps) {
        return new RoleAnswer(
                fit.role().slug(),
                fit.role().label(),
                fit.fit().slug(),
                fit.required().stream().map(need -> need(need, withReps)).toList(),
                fit.preferred().stream().map(need -> need(need, withReps)).toList(),
                fit.summary(),
                fit.role().local());
    }

    private static Need need(RoleFit.Need need, boolean withReps) {
        Outcome outcome = need.judged().outcome();
        return new Need(
                need.asked().slug(),
                need.judged().finding().label(),
                need.asked().without(),
                need.shown().slug(),
                outcome.verdict().slug(),
                outcome.rate().opportunities(),
                outcome.rate().events(),
                need.judged().games(),
                outcome.share(),
                AssessAnswer.end(outcome.shown().map(Interval::low)),
                AssessAnswer.end(outcome.shown().map(Interval::high)),
                need.judged().finding().standard().line(),
                outcome.moreNeeded(),
                need.judged().sentence(),
                AssessAnswer.reps(need.judged(), withReps));
    }
}
