package rushlight.ask;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * How a question was read. What a rep is like goes into the situations, all else into the filters; every word is in a
 * chip, was needed for the grammar, or stands among the unread ones.
 *
 * @param question what was asked, as it was written
 * @param find what it wants to see
 * @param text the reading as a sentence a coach can check
 * @param situation the reps it counts; empty where it counts none
 * @param filters the rest, in the order of the question; a kind of filter may stand more than once only for {@link Filter.About}
 * @param unread the words nothing was made of
 * @param chips the parts of the question that mean something, in order
 */
public record Asked(
        String question,
        Find find,
        String text,
        Optional<SituationPair> situation,
        List<Filter> filters,
        List<Unread> unread,
        List<Chip> chips) {
    /**
     * A word nothing was made of.
     *
     * @param word as it stands in the question
     * @param from where it begins, in UTF-16 units
     * @param to where it ends
     */
    public record Unread(String word, int from, int to) {}

    public Asked {
        filters = List.copyOf(filters);
        unread = List.copyOf(unread);
        chips = List.copyOf(chips);
    }

    /** Whether it keeps to a part of the film: to some players, games, opponents or levels, or to what was noted. */
    boolean isOfPart() {
        return filters.stream()
                .anyMatch(filter -> filter instanceof Filter.OfMan
                        || filter instanceof Filter.Prospects
                        || filter instanceof Filter.Games
                        || filter instanceof Filter.Opponents
                        || filter instanceof Filter.Levels
                        || filter instanceof Filter.Note);
    }

    /** Whether players are to be ranked, or told apart by words nothing was made of, and there is nothing to count. */
    boolean isUncountable() {
        boolean ranked =
                filters.stream().anyMatch(filter -> filter instanceof Filter.Order || filter instanceof Filter.Top);
        return find == Find.PROSPECTS && situation.isEmpty() && (ranked || (!isOfPart() && !unread.isEmpty()));
    }

    /** The first filter of a kind. */
    public <T extends Filter> Optional<T> filter(Class<T> kind) {
        return filters.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    /** Every filter of a kind. */
    public <T extends Filter> List<T> filters(Class<T> kind) {
        return filters.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The concepts that stand in a relation; empty where none are asked for. */
    public List<String> about(Filter.Relation relation) {
        return filters(Filter.About.class).stream()
                .filter(about -> about.relation() == relation)
                .flatMap(about -> about.slugs().stream())
                .distinct()
                .toList();
    }

    /** The question without a part of it. */
    public String without(Chip chip) {
        return swapped(chip, "");
    }

    /** The question with other words in the place of a part. */
    public String swapped(Chip chip, String words) {
        String before = question.substring(0, chip.from());
        String after = question.substring(chip.to());
        return (before + words + after).strip().replaceAll(" {2,}", " ");
    }

    /** Whether some chip is like this. */
    public boolean hasChip(Predicate<Chip> like) {
        return chips.stream().anyMatch(like);
    }
}
