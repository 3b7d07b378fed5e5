package rushlight.film.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rushlight.film.Step;
import rushlight.knowledge.Taxonomy;
import rushlight.words.LabelKey;
import rushlight.words.Meaning;
import rushlight.words.Vocabulary;

/** Reads an exchange: steps between {@code >} signs, the blocker's in brackets, his hand after {@code @}. */
final class ExchangeReader {
    private static final List<String> HANDS = List.of("inside", "outside", "left", "right");

    private static final Pattern HAND_OF_BLOCKER = Pattern.compile("\\[[^\\[\\]]*]\\s*@.*");

    private final String column;
    private final Vocabulary his;
    private final Vocabulary blockers;
    private final ValueReader hisLabels;
    private final ValueReader blockersLabels;

    ExchangeReader(Taxonomy taxonomy) {
        this.column = taxonomy.film().exchange().name();
        this.his = vocabulary(taxonomy, "him");
        this.blockers = vocabulary(taxonomy, "blocker");
        this.hisLabels = new ConceptReader(column, his, text -> List.of());
        this.blockersLabels = new ConceptReader(column, blockers, text -> List.of());
    }

    /** The steps in order; those at fault are left out and told. */
    List<Step> read(String cell, RowNotes notes) {
        List<Step> steps = new ArrayList<>();
        int number = 0;
        for (String part : cell.split(">", -1)) {
            number++;
            String text = part.strip();
            if (text.isEmpty()) {
                form(cell, "step " + number + " is empty; write one step on each side of a >.", notes);
            } else {
                step(text, notes).ifPresent(steps::add);
            }
        }
        return steps;
    }

    private Optional<Step> step(String text, RowNotes notes) {
        if (text.indexOf('[') >= 0 || text.indexOf(']') >= 0) {
            return blockersStep(text, notes);
        }
        int at = text.indexOf('@');
        String label = at < 0 ? text : text.substring(0, at).strip();
        Optional<String> hand = at < 0 ? Optional.empty() : hand(text.substring(at + 1), notes);
        if (label.isEmpty()) {
            form(text, "\"" + text + "\" names a hand and no step.", notes);
            return Optional.empty();
        }
        Optional<String> concept = known(label, his)
                ? hisLabels.read(label, notes)
                : wrongMan(label, blockers, "is the blocker's; write [" + label + "].", hisLabels, notes);
        boolean handMissing = at >= 0 && hand.isEmpty();
        return handMissing ? Optional.empty() : concept.map(slug -> new Step(Step.By.HIM, slug, hand));
    }

    private Optional<Step> blockersStep(String text, RowNotes notes) {
        boolean bracketed = text.startsWith("[") && text.endsWith("]");
        String label = bracketed ? text.substring(1, text.length() - 1).strip() : "";
        if (label.indexOf('@') >= 0
                || (!bracketed && HAND_OF_BLOCKER.matcher(text).matches())) {
            form(text, "only his own steps name a hand; take the @ off \"" + text + "\".", notes);
            return Optional.empty();
        }
        if (!bracketed || label.indexOf('[') >= 0 || label.indexOf(']') >= 0) {
            form(text, "the brackets of \"" + text + "\" do not close one step; write [step] > next step.", notes);
            return Optional.empty();
        }
        if (label.isEmpty()) {
            form(text, "there is no step between the brackets.", notes);
            return Optional.empty();
        }
        Optional<String> concept = known(label, blockers)
                ? blockersLabels.read(label, notes)
                : wrongMan(label, his, "is his own; write it without brackets.", blockersLabels, notes);
        return concept.map(slug -> new Step(Step.By.BLOCKER, slug, Optional.empty()));
    }

    private Optional<String> wrongMan(
            String label, Vocabulary other, String advice, ValueReader otherwise, RowNotes notes) {
        if (!known(label, other)) {
            return otherwise.read(label, notes);
        }
        notes.fault(column, label, Fault.Code.WRONG_MAN, "\"" + label + "\" " + advice);
        return Optional.empty();
    }

    private Optional<String> hand(String text, RowNotes notes) {
        String hand = LabelKey.of(text);
        if (HANDS.contains(hand)) {
            return Optional.of(hand);
        }
        notes.fault(
                column,
                text,
                Fault.Code.UNKNOWN_HAND,
                "there is no hand \"" + text.strip() + "\"; write " + Sentences.or(HANDS) + " after the @.",
                HANDS);
        return Optional.empty();
    }

    private void form(String value, String message, RowNotes notes) {
        notes.fault(column, value, Fault.Code.EXCHANGE_FORM, message);
    }

    private static boolean known(String label, Vocabulary vocabulary) {
        return !(vocabulary.meaning(label) instanceof Meaning.None);
    }

    private static Vocabulary vocabulary(Taxonomy taxonomy, String by) {
        Set<String> classes = taxonomy.film().stepFacets().stream()
                .filter(facet -> facet.by().equals(by))
                .flatMap(facet -> facet.classes().stream())
                .collect(Collectors.toSet());
        return Vocabulary.of(taxonomy, classes, Optional.empty());
    }
}
