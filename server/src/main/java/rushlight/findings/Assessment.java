package rushlight.findings;

import java.util.List;
import java.util.Optional;
import rushlight.film.Prospect;

/**
 * What the film says about one prospect.
 *
 * @param prospect who
 * @param reps the reps on the tape, one reading each
 * @param games the games they come from
 * @param leftOut the reps that were kept out of the counts
 * @param primary the move he opens with most, where one clearly leads
 * @param twoMoves the two he opens with most, where neither leads
 * @param findings every finding in order of the slugs
 * @param conclusions what follows from several findings together
 * @param likelyDuties what duty he seems to have where nobody says; shown beside the question and never applied to a count
 * @param roles every job on a front held against the film, what fits best first
 */
public record Assessment(
        Prospect prospect,
        int reps,
        int games,
        LeftOut leftOut,
        Optional<Primary> primary,
        List<String> twoMoves,
        List<Judged> findings,
        List<Conclusion> conclusions,
        List<Conclusion> likelyDuties,
        List<RoleFit> roles) {
    /**
     * Reps that were kept out of the counts.
     *
     * @param lowConfidence the evaluator was not sure of them
     * @param drops there was nothing in them that the findings look at
     */
    public record LeftOut(int lowConfidence, int drops) {}

    /**
     * What a rule concluded about him.
     *
     * @param slug of what he is said to be, or of the duty he is likely to have
     * @param rule name of the rule
     * @param sentence the rule in words
     * @param from slugs of the findings it rests on
     */
    public record Conclusion(String slug, String rule, String sentence, List<String> from) {
        public Conclusion {
            from = List.copyOf(from);
        }
    }

    public Assessment {
        twoMoves = List.copyOf(twoMoves);
        findings = List.copyOf(findings);
        conclusions = List.copyOf(conclusions);
        likelyDuties = List.copyOf(likelyDuties);
        roles = List.copyOf(roles);
    }

    /** How many of his reps two evaluators have read. */
    public int readTwice() {
        return findings.stream()
                .findFirst()
                .flatMap(one -> one.evidence().tape().readTwice())
                .map(twice -> twice.first().size())
                .orElse(0);
    }

    /** Whether more than one evaluator stands behind the tags, in a sentence. */
    public String taggers() {
        int twice = readTwice();
        return twice == 0
                ? "One tagger: nobody else has read these games, so how far the tags can be relied on is not known."
                : "Two taggers read " + twice + (twice == 1 ? " rep" : " reps")
                        + " of his; each finding says how far they see it alike.";
    }

    /** The finding with this slug. */
    public Optional<Judged> finding(String slug) {
        return findings.stream()
                .filter(one -> one.finding().slug().equals(slug))
                .findFirst();
    }

    /** The finding, or the task of a role, with this slug. */
    public Optional<Judged> counted(String slug) {
        return finding(slug)
                .or(() -> roles.stream()
                        .flatMap(RoleFit::needs)
                        .map(RoleFit.Need::judged)
                        .filter(one -> one.finding().slug().equals(slug))
                        .findFirst());
    }
}
