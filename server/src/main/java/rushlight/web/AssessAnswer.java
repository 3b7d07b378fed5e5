package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.evidence.Interval;
import rushlight.film.Times;
import rushlight.findings.Assessment;
import rushlight.findings.Evidence;
import rushlight.findings.Judged;
import rushlight.findings.OpinionsBeside;
import rushlight.findings.Outcome;
import rushlight.findings.Primary;
import rushlight.findings.Spoken;
import rushlight.situation.Sighting;

/**
 * What film says about one prospect, as programs read it. Slugs, not labels, are the keys.
 *
 * @param prospect his name
 * @param id his id
 * @param reps reps on the tape
 * @param games games they come from
 * @param leftOut reps kept out of the counts
 * @param taggers whether more than one evaluator stands behind the tags
 * @param primary the move he opens with most, null where none clearly leads
 * @param twoMoves the two he opens with most, where neither leads
 * @param findings in order of their slugs
 * @param conclusions what follows from several findings together
 * @param apart what was said of him and no finding answers
 * @param roles every job on a front held against the film, what fits best first
 * @param projections what evaluators think he will be: their own judgement, no count
 */
public record AssessAnswer(
        String prospect,
        String id,
        int reps,
        int games,
        Assessment.LeftOut leftOut,
        Taggers taggers,
        Optional<Main> primary,
        List<String> twoMoves,
        List<Finding> findings,
        List<Assessment.Conclusion> conclusions,
        List<SaidAnswer> apart,
        List<RoleAnswer> roles,
        List<ProjectionAnswer> projections) {
    /** The move he opens with most, with its share and the share's likely range. */
    public record Main(String move, double share, double low, double high) {}

    /** How many of his reps two evaluators have read, and the same in a sentence. */
    public record Taggers(int readTwice, String sentence) {}

    /** One row of a count. */
    public record Row(String value, int opportunities, int events) {}

    /** The count with none, or with all, of the unknown duties as his. */
    public record Bound(String unknownDuties, int opportunities, int events, String verdict) {}

    /** The count as if every unknown duty were this one. */
    public record IfDuty(String assignment, int opportunities, int events, String verdict) {}

    /** Where a rep lies on film, in seconds; an end of null means it was not told. */
    public record Seconds(String video, double start, OptionalDouble end) {
        /** Where a rep lies; empty where it has no film or no start on it. */
        public static Optional<Seconds> of(Sighting at) {
            OptionalDouble start = seconds(at.start());
            return start.isEmpty()
                    ? Optional.empty()
                    : at.video().map(video -> new Seconds(video, start.getAsDouble(), seconds(at.end())));
        }

        private static OptionalDouble seconds(Optional<String> written) {
            return written.map(Times::seconds).orElseGet(OptionalDouble::empty);
        }
    }

    /** One rep behind a count. */
    public record Rep(String rep, String game, boolean event, Optional<Seconds> seconds) {}

    /** One finding held against his tape. */
    public record Finding(
            String finding,
            String polarity,
            String verdict,
            String severity,
            boolean safety,
            String measure,
            int opportunities,
            int events,
            int games,
            OptionalDouble rate,
            OptionalDouble low,
            OptionalDouble high,
            OptionalDouble line,
            OptionalDouble houseLine,
            OptionalDouble probability,
            OptionalInt moreNeeded,
            Optional<String> mixedWith,
            List<String> rootedIn,
            boolean opponentHeavy,
            List<Row> rows,
            Optional<List<Bound>> bounds,
            List<IfDuty> conditional,
            List<Rep> reps,
            List<SaidAnswer> said,
            List<String> train,
            String because,
            String sentence,
            Optional<String> question,
            boolean local,
            Optional<PeerAnswer> peers,
            Optional<AlikeAnswer> agreement) {}

    /** The answer for one assessment. */
    public static AssessAnswer of(Assessment assessment) {
        return of(assessment, Beside.NOTHING, true);
    }

    /**
     * The answer for one assessment.
     *
     * @param beside what people said and think of him
     * @param withReps whether each finding lists its reps; a page may ask for them one finding at a time
     */
    public static AssessAnswer of(Assessment assessment, Beside beside, boolean withReps) {
        Spoken spoken = beside.spoken();
        return new AssessAnswer(
                assessment.prospect().name(),
                assessment.prospect().id(),
                assessment.reps(),
                assessment.games(),
                assessment.leftOut(),
                new Taggers(assessment.readTwice(), assessment.taggers()),
                assessment.primary().map(AssessAnswer::main),
                assessment.twoMoves(),
                assessment.findings().stream()
                        .map(judged -> finding(judged, beside, withReps))
                        .toList(),
                assessment.conclusions(),
                spoken.apart().stream()
                        .map(opinion -> SaidAnswer.of(opinion, Optional.empty(), OpinionsBeside.quoted(opinion)))
                        .toList(),
                assessment.roles().stream()
                        .map(fit -> RoleAnswer.of(fit, withReps))
                        .toList(),
                beside.projections());
    }

    static Main main(Primary primary) {
        Interval shown = primary.shown();
        return new Main(primary.move(), primary.rate().share().orElse(0), shown.low(), shown.high());
    }

    private static Finding finding(Judged judged, Beside beside, boolean withReps) {
        Outcome outcome = judged.outcome();
        var finding = judged.finding();
        return new Finding(
                finding.slug(),
                finding.polarity().slug(),
                outcome.verdict().slug(),
                finding.severity().slug(),
                finding.safety(),
                finding.measure().slug(),
                outcome.rate().opportunities(),
                outcome.rate().events(),
                judged.games(),
                outcome.share(),
                end(outcome.shown().map(Interval::low)),
                end(outcome.shown().map(Interval::high)),
                finding.standard().line(),
                finding.standard().houseLine(),
                outcome.probability(),
                outcome.moreNeeded(),
                judged.mixedWith().stream().findFirst(),
                judged.rootedIn(),
                judged.heavyOpponent().isPresent(),
                outcome.rows().stream()
                        .map(r -> new Row(
                                r.value(), r.rate().opportunities(), r.rate().events()))
                        .toList(),
                bounds(judged),
                judged.conditional().stream()
                        .map(c -> new IfDuty(
                                c.assignment(),
                                c.rate().opportunities(),
                                c.rate().events(),
                                c.verdict().slug()))
                        .toList(),
                reps(judged, withReps),
                beside.spoken().to(finding.slug()).stream()
                        .map(one -> SaidAnswer.of(
                                one.opinion(), Optional.of(one.agreement().slug()), one.sentence()))
                        .toList(),
                finding.advice().trainFirst(),
                finding.advice().because(),
                judged.sentence(),
                finding.advice().question(),
                finding.local(),
                Optional.ofNullable(beside.peers().get(finding.slug())).map(PeerAnswer::of),
                judged.seenAlike().map(AlikeAnswer::of));
    }

    private static Optional<List<Bound>> bounds(Judged judged) {
        List<Bound> bounds = judged.bounds().stream()
                .map(b -> new Bound(
                        b.unknownDuties(),
                        b.rate().opportunities(),
                        b.rate().events(),
                        b.verdict().slug()))
                .toList();
        return bounds.isEmpty() ? Optional.empty() : Optional.of(bounds);
    }

    static List<Rep> reps(Judged judged, boolean withReps) {
        return withReps
                ? judged.evidence().reps().stream().map(AssessAnswer::rep).toList()
                : List.of();
    }

    private static Rep rep(Evidence.Rep rep) {
        var at = rep.sighting();
        return new Rep(at.rep(), at.game(), rep.event(), Seconds.of(at));
    }

    static OptionalDouble end(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
