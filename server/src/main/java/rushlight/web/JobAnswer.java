package rushlight.web;

import java.util.Optional;

/**
 * Long work.
 *
 * @param job its name
 * @param state {@code running}, {@code done} or {@code failed}
 * @param step what it is doing, for people
 * @param done from 0 to 1
 * @param report what came of an import
 * @param plan what came of a request for a plan
 * @param problem why it failed, as problem details
 */
public record JobAnswer(
        String job,
        String state,
        String step,
        double done,
        Optional<ImportReport> report,
        Optional<PlanSheet> plan,
        Optional<Object> problem) {}
