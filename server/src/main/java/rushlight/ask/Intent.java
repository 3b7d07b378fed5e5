package rushlight.ask;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a question wants to see, and the words that say so. */
final class Intent {
    /**
     * The decision.
     *
     * @param find what it wants to see
     * @param by the words that decided; empty where nothing said so
     */
    record Decided(Find find, Optional<Part> by) {}

    /** What is said of two named players is a comparison, where one of these would be wanted of one. */
    private static final Set<Find> OF_TWO = Set.of(Find.REPS, Find.TECHNIQUES, Find.PROSPECTS);

    private static final Set<String> QUALITIES = Set.of("best", "worst");

    private final Parts parts;
    private final List<Condition> conditions;
    private final int named;

    Intent(Parts parts, List<Condition> conditions) {
        this.parts = parts;
        this.conditions = conditions;
        this.named = parts.names(Sense.Name.Kind.PROSPECT).size();
    }

    Decided decided() {
        Optional<Part> better =
                parts.parts().stream().filter(p -> p.does(Act.BETTER)).findFirst();
        Optional<Part> than =
                parts.parts().stream().filter(p -> p.does(Act.THAN)).findFirst();
        boolean either = parts.has(Act.OR) && conditions.stream().anyMatch(Condition::either);
        if (better.isPresent() && (than.isPresent() || either)) {
            return new Decided(Find.COMPARE, better);
        }
        Optional<Part> against = Contrast.of(parts, conditions).map(Contrast::by);
        if (named == 1 && against.isPresent()) {
            return new Decided(Find.COMPARE, against);
        }
        Optional<Part> like = cue(Act.FIND, Find.SIMILAR);
        if (like.isPresent() && named > 0) {
            return new Decided(Find.SIMILAR, like);
        }
        Optional<Part> first =
                parts.parts().stream().filter(part -> strong(part).isPresent()).findFirst();
        Optional<Part> strong = first.filter(part -> !part.does(Act.RELATION) || part.does(Act.KIND))
                .or(() -> cue(Act.FIND, Find.DRILLS).filter(part -> strong(part).isPresent()))
                .or(() ->
                        cue(Act.FIND, Find.COUNTERS).filter(part -> strong(part).isPresent()))
                .or(() -> first);
        if (named > 1
                && strong.flatMap(this::strong).filter(f -> !OF_TWO.contains(f)).isEmpty()) {
            return new Decided(Find.COMPARE, cue(Act.FIND, Find.COMPARE).or(() -> cue(Act.PERHAPS, Find.COMPARE)));
        }
        Optional<Part> between = cue(Act.FIND, Find.COMPARE);
        boolean terms = parts.parts().stream().filter(Part::isTerm).count() > 1;
        if (named == 0 && between.isPresent() && terms && strong.isEmpty()) {
            return new Decided(Find.TECHNIQUES, between);
        }
        boolean faults = !conditions.isEmpty() && conditions.stream().allMatch(c -> c.role() == Chip.Role.FAULT);
        if (faults
                && strong.flatMap(this::strong).filter(f -> f == Find.COUNTERS).isPresent()) {
            return new Decided(Find.DRILLS, strong);
        }
        return strong.map(part -> new Decided(strong(part).orElseThrow(), strong))
                .orElseGet(this::unsaid);
    }

    private Optional<Part> cue(Act act, Find find) {
        return parts.parts().stream()
                .filter(part -> part.value(act).filter(find.slug()::equals).isPresent())
                .findFirst();
    }

    private Optional<Find> strong(Part part) {
        Optional<Find> find = part.value(Act.FIND).map(Intent::find);
        if (Conditions.isActOfHis(parts.parts(), parts.parts().indexOf(part))) {
            return Optional.empty();
        }
        if (find.filter(f -> f != Find.COMPARE && f != Find.SIMILAR).isPresent()) {
            boolean ofNobody = find.get() == Find.FINDINGS && part.does(Act.PERHAPS) && named == 0;
            return isUnit(part) || ofNobody ? Optional.empty() : find;
        }
        if (part.does(Act.WHO)) {
            return Optional.of(Find.PROSPECTS);
        }
        if (part.does(Act.POLARITY)) {
            return Optional.of(Find.FINDINGS);
        }
        boolean ofTheBook = part.does(Act.KIND) || (part.does(Act.RELATION) && !part.does(Act.IS));
        return ofTheBook && named == 0 ? Optional.of(Find.TECHNIQUES) : Optional.empty();
    }

    /** "Reps" behind a number is what is counted, not what is wanted. */
    private boolean isUnit(Part part) {
        int at = parts.parts().indexOf(part);
        return part.does(Act.UNIT) && at > 0 && parts.parts().get(at - 1).number() >= 0;
    }

    private Decided unsaid() {
        Optional<Part> perhaps =
                parts.parts().stream().filter(part -> part.does(Act.PERHAPS)).findFirst();
        boolean elsewhere = parts.quoted().isPresent()
                || !parts.names(Sense.Name.Kind.OPPONENT).isEmpty()
                || !parts.names(Sense.Name.Kind.GAME).isEmpty();
        if (named == 1 && parts.has(Act.PERHAPS) && Conditions.isEither(conditions)) {
            return new Decided(Find.COMPARE, perhaps);
        }
        boolean judged = parts.doing(Act.ORDER).stream()
                .flatMap(part -> part.value(Act.ORDER).stream())
                .anyMatch(QUALITIES::contains);
        boolean men = conditions.isEmpty()
                && !(parts.names(Sense.Name.Kind.TEAM).isEmpty()
                        && parts.names(Sense.Name.Kind.CLASS_YEAR).isEmpty());
        if ((named > 0 && judged && !conditions.isEmpty()) || (named == 0 && men && perhaps.isEmpty())) {
            return new Decided(Find.PROSPECTS, Optional.empty());
        }
        if (named > 0) {
            boolean reps = !conditions.isEmpty() || elsewhere;
            return new Decided(reps ? Find.REPS : Find.FINDINGS, Optional.empty());
        }
        if (parts.has(Act.ORDER) || parts.has(Act.AT_LEAST) || (parts.has(Act.TOP) && !conditions.isEmpty())) {
            return new Decided(Find.PROSPECTS, Optional.empty());
        }
        if (parts.has(Act.VERDICT)) {
            return new Decided(Find.FINDINGS, Optional.empty());
        }
        Optional<Find> weak = perhaps.flatMap(part -> part.value(Act.PERHAPS)).map(Intent::find);
        boolean shown = conditions.stream()
                .anyMatch(c ->
                        c.role() == Chip.Role.FACED || (c.isAct() && !c.part().does(Act.PERHAPS)));
        if (weak.filter(f -> f == Find.COUNTERS).isPresent() && shown) {
            return new Decided(Find.COUNTERS, perhaps);
        }
        if (weak.filter(f -> f == Find.PROSPECTS).isPresent() && !conditions.isEmpty()) {
            return new Decided(Find.PROSPECTS, perhaps);
        }
        if (weak.filter(f -> f == Find.TECHNIQUES).isPresent()) {
            return new Decided(Find.TECHNIQUES, perhaps);
        }
        boolean several = conditions.size() > 1
                || parts.parts().stream().filter(Part::isTerm).count() > 1
                || elsewhere;
        boolean reps = several || (weak.filter(f -> f == Find.REPS).isPresent() && !conditions.isEmpty());
        return new Decided(reps && !startsWithFamily() ? Find.REPS : Find.TECHNIQUES, Optional.empty());
    }

    private boolean startsWithFamily() {
        return !conditions.isEmpty()
                && conditions.stream().allMatch(Condition::isAct)
                && conditions.stream().noneMatch(Condition::denied);
    }

    private static Find find(String word) {
        return Find.valueOf(word.toUpperCase(Locale.ROOT));
    }
}
