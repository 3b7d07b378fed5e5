package rushlight.agreement;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How often two evaluators said the same, and how much of it is more than chance.
 *
 * @param common reps for which both said something
 * @param same reps among them for which both said the same
 * @param alpha Krippendorff's alpha; empty under {@value Trust#ENOUGH} common reps, or where one thing only was said
 * @param ac1 Gwet's AC1, where one label makes up more than four fifths and alpha misleads
 * @param kappa Cohen's kappa, for columns of one value
 * @param trust what follows
 */
public record Agreed(
        int common,
        int same,
        Optional<Coefficient> alpha,
        Optional<Coefficient> ac1,
        OptionalDouble kappa,
        Trust trust) {}
