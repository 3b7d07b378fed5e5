package rushlight.ask;

import java.util.Optional;
import rushlight.situation.Situation;

/**
 * One thing a question says of the reps.
 *
 * @param part the words
 * @param role what part it plays
 * @param event whether it is something he did or that came of it; else it is what he met
 * @param situation the reps that are so, not yet denied
 * @param kind the reps it could be on
 * @param slug the term, where it is one
 * @param denied whether the question says that it is not so
 * @param opening whether something else came off it
 */
record Condition(
        Part part,
        Chip.Role role,
        boolean event,
        Situation situation,
        Optional<Situation> kind,
        Optional<String> slug,
        boolean denied,
        boolean opening) {
    /** The reps that are as the question says. */
    Situation said() {
        return denied ? Situation.not(situation) : situation;
    }

    boolean isAct() {
        return role == Chip.Role.DID;
    }

    boolean isOutcome() {
        return event && !isAct();
    }

    Condition asCircumstance() {
        return new Condition(part, role, false, situation, kind, slug, denied, opening);
    }

    Condition with(Situation other) {
        return new Condition(part, role, event, other, kind, slug, denied, opening);
    }
}
