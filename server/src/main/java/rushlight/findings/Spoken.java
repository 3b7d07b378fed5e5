package rushlight.findings;

import java.util.List;
import java.util.Map;
import rushlight.film.Opinion;

/**
 * What was said of a player, beside what his reps say. It takes no part in a verdict.
 *
 * @param byFinding what was said to each finding of an assessment, by its slug; a finding nobody spoke of is not in it
 * @param apart what no finding of the assessment answers
 */
public record Spoken(Map<String, List<Said>> byFinding, List<Opinion> apart) {
    /** Nobody said anything. */
    public static final Spoken NOTHING = new Spoken(Map.of(), List.of());

    /**
     * An opinion beside the finding it speaks of.
     *
     * @param opinion what was said
     * @param agreement what the reps say to it
     * @param sentence what a person reads
     */
    public record Said(Opinion opinion, Agreement agreement, String sentence) {}

    public Spoken {
        byFinding = Map.copyOf(byFinding);
        apart = List.copyOf(apart);
    }

    /** What was said to one finding, in the order it was said. */
    public List<Said> to(String finding) {
        return byFinding.getOrDefault(finding, List.of());
    }
}
