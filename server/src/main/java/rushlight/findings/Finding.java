package rushlight.findings;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.evidence.Rate;
import rushlight.knowledge.Local;

/**
 * One thing that film can say about a player, as the book describes it.
 *
 * @param slug its name that never changes
 * @param label its name for people
 * @param definition one sentence
 * @param polarity what it says about him
 * @param severity how much it matters
 * @param safety whether it is about someone's health and comes before everything else
 * @param measure how it counts
 * @param counting which reps it counts
 * @param standard what the count is held against
 * @param advice what to say and do about it
 * @param links what it has to do with other findings
 * @param local whether the user's own file added it
 */
public record Finding(
        String slug,
        String label,
        String definition,
        Polarity polarity,
        Severity severity,
        boolean safety,
        Measure measure,
        Counting counting,
        Standard standard,
        Advice advice,
        Links links,
        boolean local) {
    /**
     * What to say and do about a finding.
     *
     * @param because one sentence a coach reads
     * @param sentence a pattern for its count, with {@code {events}}, {@code {opportunities}} and {@code {rate}}
     * @param question what to ask the coach where a duty matters
     * @param trainFirst slugs of the skills to train, first things first
     * @param starterDrill slug of the drill to begin with
     * @param ruleOutFirst what else could explain it
     */
    public record Advice(
            String because,
            Optional<String> sentence,
            Optional<String> question,
            List<String> trainFirst,
            Optional<String> starterDrill,
            Optional<String> ruleOutFirst) {
        public Advice {
            trainFirst = List.copyOf(trainFirst);
        }

        /** The sentence with these counts; empty where the finding has none. */
        public Optional<String> said(Rate rate) {
            return sentence.map(pattern -> pattern.replace("{events}", Integer.toString(rate.events()))
                    .replace("{opportunities}", Integer.toString(rate.opportunities()))
                    .replace("{rate}", Sentences.percent(rate.share().orElse(0))));
        }
    }

    /**
     * What a finding has to do with others, by their slugs.
     *
     * @param twin the finding that is told of the same reps where the duty is unknown
     * @param contradicts findings of the other kind read from the same reps
     * @param explainedBy findings that may be its root
     * @param combines the findings a rule concludes it from
     */
    public record Links(
            Optional<String> twin, Set<String> contradicts, Set<String> explainedBy, List<String> combines) {
        public Links {
            contradicts = Set.copyOf(contradicts);
            explainedBy = Set.copyOf(explainedBy);
            combines = List.copyOf(combines);
        }
    }

    /** The label as people read it: with a mark where the finding is the user's own. */
    public String shown() {
        return Local.shown(label, local);
    }

    /** Whether reps are counted for it, rather than a rule concluding it. */
    public boolean counts() {
        return counting.scope().isPresent() || !counting.parents().isEmpty();
    }
}
