package rushlight.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.situation.Situation;

/** Makes of what a question says the reps to count: what he met, and what came of it. */
final class Pairs {
    private static final String PHASE = "phase";

    private final Places places;
    private final Conditions conditions;
    private final Claims claims;

    Pairs(Places places, Conditions conditions, Claims claims) {
        this.places = places;
        this.conditions = conditions;
        this.claims = claims;
    }

    /** The pair for players, reps or a comparison. */
    Optional<SituationPair> of(Find find, List<Condition> said, Optional<String> quality, Optional<Situation> subject) {
        List<Condition> events = said.stream().filter(Condition::event).toList();
        List<Condition> met =
                new ArrayList<>(said.stream().filter(c -> !c.event()).toList());
        boolean both = events.stream().anyMatch(Condition::isOutcome)
                && events.stream().anyMatch(c -> c.isAct() && !c.denied());
        if (both) {
            boolean first = events.stream().anyMatch(Pairs::isOfFirstMove);
            events.stream()
                    .filter(c -> c.isAct() && !c.denied())
                    .forEach(c -> met.add(first ? conditions.opened(c) : opening(c)));
            events = events.stream().filter(c -> !c.isAct() || c.denied()).toList();
        } else if (events.size() > 1 && events.stream().anyMatch(Condition::opening)) {
            List<Condition> first = events.stream().filter(Condition::opening).toList();
            first.forEach(c -> met.add(conditions.opened(c)));
            events = events.stream().filter(c -> !c.opening()).toList();
        } else if (quality.isPresent()
                && find != Find.REPS
                && events.stream().allMatch(c -> Conditions.isMove(c) && !c.denied())
                && !events.isEmpty()) {
            events.forEach(c -> met.add(opening(c)));
            events = List.of();
        } else if (events.size() == 1) {
            events = List.of(opening(events.get(0)));
        }
        if (events.isEmpty()) {
            return circumstances(find, met, quality, subject);
        }
        Situation event = Situation.all(Condition.all(events));
        List<Situation> opportunity = new ArrayList<>(Condition.all(met));
        if (opportunity.isEmpty() && events.stream().allMatch(c -> c.denied() && c.isAct())) {
            events.get(0).slug().flatMap(claims::owed).ifPresent(opportunity::add);
        }
        List<Condition> meaning = new ArrayList<>(met);
        meaning.addAll(events);
        boolean told = met.stream().anyMatch(this::tellsKind) || (met.isEmpty() && !opportunity.isEmpty());
        if (!told) {
            kind(meaning)
                    .or(() -> subject)
                    .or(() -> met.stream().anyMatch(Pairs::leavesOpen) ? Optional.of(any()) : Optional.empty())
                    .ifPresent(opportunity::add);
        }
        if (opportunity.isEmpty()) {
            opportunity.add(any());
        }
        return Optional.of(new SituationPair(Situation.all(opportunity), event));
    }

    private Condition opening(Condition condition) {
        return condition.opening() ? conditions.opened(condition) : condition;
    }

    private Optional<SituationPair> circumstances(
            Find find, List<Condition> met, Optional<String> quality, Optional<Situation> subject) {
        if (met.isEmpty() && quality.isEmpty()) {
            return Optional.empty();
        }
        List<Situation> here = new ArrayList<>(Condition.all(met));
        if (quality.isPresent() || find == Find.COMPARE) {
            if (met.stream().noneMatch(this::tellsKind)) {
                subject.ifPresent(here::add);
            }
            Situation opportunity = here.isEmpty() ? any() : Situation.all(here);
            return Optional.of(new SituationPair(opportunity, places.condition("outcome=" + quality.orElse("won"))));
        }
        Situation event = Situation.all(here);
        if (find != Find.PROSPECTS) {
            return Optional.of(SituationPair.just(event));
        }
        return Optional.of(new SituationPair(kind(met).or(() -> subject).orElseGet(Pairs::any), event));
    }

    /** Whether it is clear from what he met whether he rushed or played the run. */
    private boolean tellsKind(Condition condition) {
        boolean phase = isPhase(condition);
        boolean play = condition.role() == Chip.Role.PLAY || condition.role() == Chip.Role.DUTY;
        return phase || play || condition.kind().isPresent() || isClass(condition);
    }

    /** When and where it was says nothing of whether he rushed. */
    private static boolean leavesOpen(Condition condition) {
        return condition.role() == Chip.Role.CONTEXT
                || condition.role() == Chip.Role.SIDE
                || condition.role() == Chip.Role.ALIGNMENT;
    }

    static boolean isPhase(Condition condition) {
        return condition.situation() instanceof Situation.Has has && has.facet().equals(PHASE);
    }

    private static boolean isOfFirstMove(Condition condition) {
        return condition.situation() instanceof Situation.Has has
                && has.facet().equals("repClass")
                && has.value().startsWith("first-move");
    }

    private static boolean isClass(Condition condition) {
        return condition.situation() instanceof Situation.Has has && has.facet().equals("repClass");
    }

    private static Optional<Situation> kind(List<Condition> conditions) {
        return conditions.stream()
                .map(Condition::kind)
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Every rush and every run. */
    static Situation any() {
        return Situation.anyOf(PHASE, List.of("pass-rush", "run"));
    }
}
