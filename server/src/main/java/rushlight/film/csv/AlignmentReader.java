package rushlight.film.csv;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rushlight.knowledge.Numbering;
import rushlight.knowledge.Taxonomy;
import rushlight.words.Meaning;
import rushlight.words.NearestLabels;
import rushlight.words.Vocabulary;

/**
 * Reads where he lined up. A slug is itself. A number is read in its numbering system and becomes the spot it stands for;
 * without a system it becomes what the book says such a number can still mean, with a warning where that is not one spot.
 */
final class AlignmentReader {
    private final Taxonomy taxonomy;
    private final Numbering numbering;
    private final Map<String, String> allNumbers;
    private final Vocabulary vocabulary;
    private final AlignmentNumbers numbers;
    private final ValueReader labels;

    AlignmentReader(Taxonomy taxonomy, Vocabulary vocabulary, ValueReader labels) {
        this.taxonomy = taxonomy;
        this.numbering = taxonomy.numbering();
        this.allNumbers = numbering.numbers();
        this.vocabulary = vocabulary;
        this.numbers = new AlignmentNumbers(taxonomy);
        this.labels = labels;
    }

    /**
     * Reads one label.
     *
     * @param system letter of the numbering system, empty where nobody says
     */
    Optional<String> read(String text, Optional<String> system, RowNotes notes) {
        Meaning meaning = vocabulary.meaning(text);
        Optional<String> named = meaning instanceof Meaning.One one ? Optional.of(one.slug()) : oneSpot(meaning);
        if (named.isPresent() && named.get().equals(text)) {
            warnOfAnotherSystem(text, system, notes);
            return named;
        }
        Optional<String> number =
                Optional.ofNullable(allNumbers.get(Numbering.key(text))).or(() -> named.flatMap(numbers::of));
        if (number.isEmpty()) {
            return named.isPresent() ? named : labels.read(text, notes);
        }
        return system.isPresent()
                ? inSystem(text, number.get(), system.get(), named, notes)
                : withoutSystem(text, number.get(), named, notes);
    }

    private Optional<String> inSystem(
            String text, String number, String system, Optional<String> named, RowNotes notes) {
        List<String> spots = numbering.positions(system, number);
        if (spots.isEmpty()) {
            return named.isPresent() ? named : noSuchNumber(text, system, notes);
        }
        if (named.isPresent() && spots.contains(spot(named.get()))) {
            return named;
        }
        if (spots.size() > 1) {
            warn(
                    text,
                    "in numbering " + system + " it can be " + labelsOf(spots) + "; it was read as \""
                            + taxonomy.label(spots.get(0)) + "\".",
                    notes);
        }
        return Optional.of(spots.get(0));
    }

    private Optional<String> withoutSystem(String text, String number, Optional<String> named, RowNotes notes) {
        Set<String> spots = new TreeSet<>();
        numbering
                .systems()
                .forEach(system ->
                        numbering.positions(system, number).stream().findFirst().ifPresent(spots::add));
        String first = numbering.systems().stream()
                .flatMap(system -> numbering.positions(system, number).stream())
                .findFirst()
                .orElseThrow();
        String read = named.or(() -> numbering.unnamed(number)).orElse(first);
        if (spots.size() > 1) {
            warn(
                    text,
                    "without its numbering system it can be " + labelsOf(spots) + "; it was read as \""
                            + taxonomy.label(read) + "\".",
                    notes);
        }
        return Optional.of(read);
    }

    private void warnOfAnotherSystem(String slug, Optional<String> system, RowNotes notes) {
        Optional<String> number = numbers.of(slug);
        if (system.isEmpty() || number.isEmpty()) {
            return;
        }
        List<String> spots = numbering.positions(system.get(), number.get());
        if (!spots.isEmpty() && !spots.contains(spot(slug))) {
            warn(
                    slug,
                    "this name always means \"" + taxonomy.label(spot(slug)) + "\"; the " + number.get()
                            + " of numbering " + system.get() + " is written " + number.get() + ".",
                    notes);
        }
    }

    private Optional<String> noSuchNumber(String text, String system, RowNotes notes) {
        List<String> near = notes.suggestions()
                .forValue(
                        Columns.NUMBERING + system,
                        text,
                        () -> NearestLabels.words(numbering.numbers(system)).to(text, 3));
        notes.fault(
                Columns.ALIGNMENT,
                text,
                Fault.Code.UNKNOWN_NUMBER,
                "numbering " + system + " has no \"" + text + "\"" + Sentences.didYouMean(near),
                near);
        return Optional.empty();
    }

    private Optional<String> oneSpot(Meaning meaning) {
        if (meaning instanceof Meaning.Several several) {
            Set<String> spots = several.slugs().stream().map(this::spot).collect(Collectors.toSet());
            return spots.size() == 1 ? spots.stream().findFirst() : Optional.empty();
        }
        return Optional.empty();
    }

    private String spot(String slug) {
        return numbering.positionOf(slug).orElse(slug);
    }

    private String labelsOf(Iterable<String> spots) {
        Set<String> labelled = new TreeSet<>();
        spots.forEach(spot -> labelled.add("\"" + taxonomy.label(spot) + "\""));
        return Sentences.or(List.copyOf(labelled));
    }

    private static void warn(String text, String message, RowNotes notes) {
        notes.warn(Columns.ALIGNMENT, text, Fault.Code.NUMBER_UNCLEAR, "\"" + text + "\": " + message);
    }
}
