package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.knowledge.Taxonomy;
import rushlight.words.Label;

/** Makes the chips of a reading: what each part was taken for, and what else it could be. */
final class Chips {
    private static final int MOST_CHOICES = 6;

    private static final Map<Act, Chip.Role> CUES = Map.of(
            Act.NOT, Chip.Role.NOT,
            Act.ORDER, Chip.Role.ORDER,
            Act.VERDICT, Chip.Role.VERDICT,
            Act.POLARITY, Chip.Role.POLARITY,
            Act.SEVERITY, Chip.Role.SEVERITY,
            Act.BETTER, Chip.Role.COMPARED,
            Act.KIND, Chip.Role.TOPIC,
            Act.RELATION, Chip.Role.TOPIC);

    private static final Map<Act, List<String>> VALUES = Map.of(
            Act.VERDICT, List.of("confirmed", "likely", "watch", "cleared", "not-enough-tape"),
            Act.POLARITY, List.of("gap", "strength"),
            Act.SEVERITY, List.of("high", "moderate", "low"),
            Act.ORDER, List.of("most", "least"));

    private static final Map<Sense.Name.Kind, Chip.Role> NAMES = Map.of(
            Sense.Name.Kind.PROSPECT, Chip.Role.PROSPECT,
            Sense.Name.Kind.GAME, Chip.Role.GAME,
            Sense.Name.Kind.OPPONENT, Chip.Role.OPPONENT,
            Sense.Name.Kind.TEAM, Chip.Role.TEAM,
            Sense.Name.Kind.CLASS_YEAR, Chip.Role.CLASS_YEAR,
            Sense.Name.Kind.LEVEL, Chip.Role.LEVEL);

    private final Taxonomy taxonomy;
    private final QuestionWords words;
    private final Topics topics;

    Chips(Taxonomy taxonomy, QuestionWords words, Topics topics) {
        this.taxonomy = taxonomy;
        this.words = words;
        this.topics = topics;
    }

    List<Chip> of(Parts parts, List<Condition> conditions, Intent.Decided decided, Set<Part> used) {
        List<Chip> found = new ArrayList<>();
        decided.by()
                .ifPresent(part ->
                        found.add(chip(part, Chip.Role.FIND, decided.find().slug(), List.of())));
        for (Part part : parts.parts()) {
            if (decided.by().filter(part::equals).isEmpty()) {
                Optional<Condition> condition =
                        conditions.stream().filter(c -> c.part().equals(part)).findFirst();
                chip(part, condition, used).ifPresent(found::add);
            }
        }
        quantities(parts, found);
        parts.quoted().ifPresent(part -> found.add(chip(part, Chip.Role.NOTE, part.text(), List.of())));
        found.sort(Comparator.comparingInt(Chip::from));
        return found;
    }

    private Optional<Chip> chip(Part part, Optional<Condition> condition, Set<Part> used) {
        for (Map.Entry<Sense.Name.Kind, Chip.Role> kind : NAMES.entrySet()) {
            List<Sense.Name> names = part.names(kind.getKey());
            if (!names.isEmpty()) {
                return Optional.of(chip(part, kind.getValue(), names.get(0).shown(), others(names)));
            }
        }
        if (part.isTerm()) {
            return used.contains(part) ? Optional.of(term(part, condition)) : Optional.empty();
        }
        if (condition.isPresent() && used.contains(part)) {
            return Optional.of(chip(part, condition.get().role(), part.text(), List.of()));
        }
        return CUES.keySet().stream()
                .filter(part::does)
                .sorted()
                .findFirst()
                .map(act -> chip(part, CUES.getOrDefault(act, Chip.Role.TOPIC), shown(part, act), values(part, act)));
    }

    private static String shown(Part part, Act act) {
        String value = part.value(act).orElse("");
        return VALUES.containsKey(act) ? value.replace('-', ' ') : part.text();
    }

    private Chip term(Part part, Optional<Condition> condition) {
        String slug =
                condition.flatMap(Condition::slug).or(() -> topics.best(part)).orElseThrow();
        Chip.Role role = condition.map(Condition::role).orElse(Chip.Role.TOPIC);
        boolean didNot = condition.filter(c -> c.denied() && c.isAct()).isPresent();
        List<Chip.Choice> choices = new ArrayList<>();
        for (Label label : part.terms()) {
            choice(label.slug(), slug, choices);
        }
        taxonomy.concept(slug).ifPresent(concept -> concept.broader().forEach(wider -> choice(wider, slug, choices)));
        return new Chip(
                didNot ? Chip.Role.DID_NOT : role,
                taxonomy.label(slug),
                part.text(),
                part.from(),
                part.to(),
                Optional.of(slug),
                part.guessed(),
                choices.stream().distinct().limit(MOST_CHOICES).toList());
    }

    private void choice(String other, String slug, List<Chip.Choice> choices) {
        if (!other.equals(slug) && taxonomy.concept(other).isPresent()) {
            choices.add(new Chip.Choice(taxonomy.label(other), taxonomy.label(other)));
        }
    }

    private List<Chip.Choice> values(Part part, Act act) {
        String own = part.value(act).orElse("");
        return VALUES.getOrDefault(act, List.of()).stream()
                .filter(value -> !value.equals(own))
                .flatMap(value ->
                        words.pattern(act, value).stream().map(text -> new Chip.Choice(value.replace('-', ' '), text)))
                .toList();
    }

    /** "At least 10", "top 5": the words and the number are one chip. */
    private static void quantities(Parts parts, List<Chip> found) {
        List<Part> list = parts.parts();
        for (int i = 1; i < list.size(); i++) {
            Part number = list.get(i);
            Part before = list.get(i - 1);
            if (number.number() >= 0 && (before.does(Act.AT_LEAST) || before.does(Act.TOP))) {
                found.removeIf(chip -> chip.from() == before.from());
                String text = parts.question().substring(before.from(), number.to());
                found.add(new Chip(
                        Chip.Role.QUANTITY,
                        before.text().toLowerCase(Locale.ROOT) + " " + number.number(),
                        text,
                        before.from(),
                        number.to(),
                        Optional.empty(),
                        false,
                        List.of()));
            }
        }
    }

    private static List<Chip.Choice> others(List<Sense.Name> names) {
        return names.stream()
                .skip(1)
                .limit(MOST_CHOICES)
                .map(name -> new Chip.Choice(name.shown(), name.shown()))
                .toList();
    }

    private static Chip chip(Part part, Chip.Role role, String label, List<Chip.Choice> choices) {
        return new Chip(role, label, part.text(), part.from(), part.to(), Optional.empty(), part.guessed(), choices);
    }
}
