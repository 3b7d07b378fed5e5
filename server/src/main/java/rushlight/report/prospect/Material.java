package rushlight.report.prospect;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rushlight.film.Projection;
import rushlight.findings.Assessment;
import rushlight.findings.Profile;
import rushlight.findings.Spoken;
import rushlight.plan.PlanAnswer;

/**
 * What a report is made from.
 *
 * @param assessment what the film says of him
 * @param spoken what people said of him
 * @param profile where he lines up and what he opens with
 * @param readers who read which games
 * @param foreseen what evaluators think he will be
 * @param plan what came of the plan that the report tells of; empty where nobody asked for one
 * @param written what the evaluator puts in
 */
public record Material(
        Assessment assessment,
        Spoken spoken,
        Profile profile,
        List<Reader> readers,
        List<Foreseen> foreseen,
        Optional<Planned> plan,
        Written written) {
    /**
     * One evaluator's reading of one game.
     *
     * @param evaluator his name
     * @param game name of the game
     * @param day when it was played
     * @param readings how many reps he read
     */
    public record Reader(String evaluator, String game, Optional<LocalDate> day, int readings) {}

    /**
     * One evaluator's projection.
     *
     * @param projection his own judgement
     * @param day when he made it, in universal time
     */
    public record Foreseen(Projection projection, LocalDate day) {}

    /**
     * The plan that a report tells of.
     *
     * @param answer what came of it
     * @param which whose plan it is, a sentence; empty where nobody kept one
     */
    public record Planned(PlanAnswer answer, String which) {}

    public Material {
        readers = List.copyOf(readers);
        foreseen = List.copyOf(foreseen);
    }

    /** The same with something else put in. */
    public Material with(Written other) {
        return new Material(assessment, spoken, profile, readers, foreseen, plan, other);
    }

    /** The same with what came of a plan. */
    public Material with(Planned planned) {
        return new Material(assessment, spoken, profile, readers, foreseen, Optional.of(planned), written);
    }
}
