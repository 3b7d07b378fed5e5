package rushlight.web;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rushlight.knowledge.Column;
import rushlight.knowledge.Taxonomy;

/**
 * The columns of the film log and what may stand in them.
 *
 * @param numbering the numbering systems of alignments
 * @param defaultNumbering the system of a bare number, where the folder sets one
 * @param hands what may follow the @ of a step
 */
public record ColumnsAnswer(
        List<Item> columns, List<NumberingSystem> numbering, Optional<String> defaultNumbering, List<String> hands) {
    private static final Set<String> ON_THE_LOG = Set.of("prospect", "game", "date", "level", "opponent", "evaluator");
    private static final List<String> HANDS = List.of("inside", "outside", "left", "right");

    /** One column. */
    public record Item(
            String name,
            String label,
            String help,
            String kind,
            boolean list,
            boolean required,
            Optional<List<String>> oneOf,
            Optional<List<String>> kinds,
            boolean onTheLog) {}

    /** A numbering system. */
    public record NumberingSystem(String system, String label) {}

    /** The columns of a book. */
    public static ColumnsAnswer of(Taxonomy taxonomy, Optional<String> defaultNumbering) {
        return new ColumnsAnswer(
                taxonomy.film().all().stream().map(ColumnsAnswer::item).toList(),
                taxonomy.numbering().systems().stream()
                        .map(letter -> new NumberingSystem(letter, "system " + letter))
                        .toList(),
                defaultNumbering,
                HANDS);
    }

    private static Item item(Column column) {
        return new Item(
                column.name(),
                column.name().replace('_', ' '),
                column.meaning(),
                column.kind().name().toLowerCase(Locale.ROOT),
                column.list(),
                column.required(),
                some(column.oneOf()),
                some(column.classes().stream().sorted().toList()),
                ON_THE_LOG.contains(column.name()));
    }

    private static Optional<List<String>> some(List<String> values) {
        return values.isEmpty() ? Optional.empty() : Optional.of(values);
    }
}
