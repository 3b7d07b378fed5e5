package rushlight.web;

import java.util.List;
import rushlight.film.Projection;
import rushlight.store.KeptProjections;

/**
 * What an evaluator thinks a player will be: his own judgement, no count.
 *
 * @param by slug of the evaluator, as it stands in addresses
 * @param role slug of the job he sees him in; empty where he names none
 * @param scale the evaluator's own scale, and {@code tier} where on it
 * @param version counted from 1; every version is kept
 * @param when it was kept, as an instant
 * @param takenBack whether this version takes it back
 * @param sentence what a person reads: whose judgement it is, and of which day
 */
public record ProjectionAnswer(
        String prospect,
        String evaluator,
        String by,
        String role,
        String readiness,
        String ceiling,
        String floor,
        String risk,
        String words,
        String scale,
        String tier,
        int version,
        String when,
        boolean takenBack,
        String sentence) {
    /** The projections that stand of one prospect. */
    public record All(List<ProjectionAnswer> projections) {}

    /** One evaluator's, every version, the newest first. */
    public record History(List<ProjectionAnswer> versions) {}

    /** The answer for one version. */
    public static ProjectionAnswer of(KeptProjections.Kept kept) {
        Projection said = kept.projection();
        String when = kept.when().toString();
        return new ProjectionAnswer(
                said.prospect(),
                said.evaluator(),
                said.by(),
                said.role(),
                said.readiness(),
                said.ceiling(),
                said.floor(),
                said.risk(),
                said.words(),
                said.scale(),
                said.tier(),
                kept.version(),
                when,
                kept.takenBack(),
                "The judgement of " + said.evaluator() + ", " + when.substring(0, when.indexOf('T'))
                        + "; no part of the counts.");
    }
}
