package rushlight.film.csv;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Numbering;
import rushlight.knowledge.Taxonomy;
import rushlight.words.LabelKey;

/** Which number an alignment is called by. */
final class AlignmentNumbers {
    private final Map<String, String> ofAlignment = new HashMap<>();

    AlignmentNumbers(Taxonomy taxonomy) {
        Numbering numbering = taxonomy.numbering();
        taxonomy.concepts()
                .forEach(concept -> numbering
                        .positionOf(concept.slug())
                        .flatMap(position -> number(concept, position, numbering))
                        .ifPresent(number -> ofAlignment.put(concept.slug(), number)));
    }

    /** The number in the names of an alignment, such as {@code 4i}; empty where its names hold none. */
    Optional<String> of(String alignment) {
        return Optional.ofNullable(ofAlignment.get(alignment));
    }

    private static Optional<String> number(Concept concept, String position, Numbering numbering) {
        List<String> names = Stream.of(List.of(concept.label()), concept.altLabels(), concept.hiddenLabels())
                .flatMap(List::stream)
                .map(name -> LabelKey.of(name) + " ")
                .toList();
        return numbering.systems().stream()
                .flatMap(system -> numbering.numbers(system).stream()
                        .filter(number -> numbering.positions(system, number).contains(position)))
                .filter(number -> names.stream().anyMatch(name -> name.startsWith(LabelKey.of(number) + " ")))
                .findFirst();
    }
}
