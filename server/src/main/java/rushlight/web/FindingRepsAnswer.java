package rushlight.web;

import java.util.List;

/**
 * The reps behind a finding.
 *
 * @param finding its slug
 * @param reps the opportunities, in the order of the tape
 */
public record FindingRepsAnswer(String finding, List<Rep> reps) {
    /**
     * One rep.
     *
     * @param event whether it happened, or could have
     * @param rep where it is
     * @param exchange the exchange as it stands in the log
     * @param note what the evaluator wrote
     */
    public record Rep(boolean event, RepSight rep, String exchange, String note) {}
}
