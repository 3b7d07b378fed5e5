package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
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
 * @param either whether it will do instead of the one before
 */
record Condition(
        Part part,
        Chip.Role role,
        boolean event,
        Situation situation,
        Optional<Situation> kind,
        Optional<String> slug,
        boolean denied,
        boolean opening,
        boolean either) {
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
        return new Condition(part, role, false, situation, kind, slug, denied, opening, either);
    }

    Condition orElse() {
        return new Condition(part, role, event, situation, kind, slug, denied, opening, true);
    }

    /** What a rep is like that all of these say. */
    static List<Situation> all(List<Condition> conditions) {
        List<Situation> said = new ArrayList<>();
        for (Condition condition : conditions) {
            int last = said.size() - 1;
            if (condition.either() && last >= 0 && !condition.denied()) {
                said.set(last, together(said.get(last), condition.said()));
            } else {
                said.add(condition.said());
            }
        }
        return said;
    }

    private static Situation together(Situation one, Situation other) {
        if (one instanceof Situation.Has a
                && other instanceof Situation.Has b
                && a.facet().equals(b.facet())) {
            return Situation.anyOf(a.facet(), List.of(a.value(), b.value()));
        }
        return Situation.any(List.of(one, other));
    }

    Condition with(Situation other) {
        return new Condition(part, role, event, other, kind, slug, denied, opening, either);
    }
}
