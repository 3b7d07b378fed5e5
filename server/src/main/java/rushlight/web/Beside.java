package rushlight.web;

import java.util.List;
import rushlight.archive.Opinions;
import rushlight.archive.Projections;
import rushlight.findings.Assessment;
import rushlight.findings.Spoken;

/**
 * What people said and think of a player, told beside what his reps say and in no count.
 *
 * @param spoken what was said of him
 * @param projections what evaluators think he will be
 */
public record Beside(Spoken spoken, List<ProjectionAnswer> projections) {
    /** Nobody said anything. */
    public static final Beside NOTHING = new Beside(Spoken.NOTHING, List.of());

    public Beside {
        projections = List.copyOf(projections);
    }

    /** What a data folder keeps of the player of an assessment. */
    public static Beside of(Assessment assessment, Opinions opinions, Projections projections) {
        return new Beside(
                opinions.beside(assessment),
                projections.of(assessment.prospect().id()).stream()
                        .map(ProjectionAnswer::of)
                        .toList());
    }
}
