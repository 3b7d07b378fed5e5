package rushlight.notes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.function.UnaryOperator;

/**
 * How well a reader reads annotated narrations: counts of every narration, pooled for a figure. What is counted is told in
 * {@link MentionCounts}, {@link RepCounts} and {@link TagCounts}; the figures and their bars stand in {@link Measure}.
 */
final class Score {
    /** Counts under each name, one a narration. */
    private final Map<String, Map<String, Tally>> byNarration = new LinkedHashMap<>();

    private final List<Miss> misses = new ArrayList<>();
    private final BiPredicate<String, String> accepted;
    private final UnaryOperator<String> group;

    /**
     * @param accepted whether the concept read stands for the one marked
     * @param group the kind of a concept, by which it is counted too
     */
    Score(BiPredicate<String, String> accepted, UnaryOperator<String> group) {
        this.accepted = accepted;
        this.group = group;
    }

    void add(Gold gold, Notes read) {
        add(gold, Proposal.of(read));
    }

    void add(Gold gold, Proposal.All read) {
        Tallies tallies = new Tallies();
        misses.addAll(MentionCounts.add(gold, read, accepted, group, tallies));
        RepCounts.add(gold, read, tallies);
        TagCounts.add(gold, read, accepted, tallies);
        byNarration.put(gold.id(), tallies.all());
    }

    int narrations() {
        return byNarration.size();
    }

    List<String> ids() {
        return List.copyOf(byNarration.keySet());
    }

    List<Miss> misses() {
        return List.copyOf(misses);
    }

    /** The counts of one narration. */
    Tally of(String narration, String counted) {
        return byNarration.getOrDefault(narration, Map.of()).getOrDefault(counted, Tally.NONE);
    }

    /** The counts of all. */
    Tally of(String counted) {
        return byNarration.values().stream()
                .map(counts -> counts.getOrDefault(counted, Tally.NONE))
                .reduce(Tally.NONE, Tally::plus);
    }

    /** What was counted under names that begin so. */
    List<String> counted(String prefix) {
        TreeSet<String> names = new TreeSet<>();
        byNarration.values().forEach(counts -> names.addAll(counts.keySet()));
        return names.stream().filter(name -> name.startsWith(prefix)).toList();
    }

    /** A figure of the whole set, by the name of its measure. */
    double value(String measure) {
        Measure found = Measure.all().stream()
                .filter(m -> m.name().equals(measure))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no measure is called " + measure));
        return found.of(of(found.counted()));
    }

    /** The mean of F1 over the concepts that were marked at least once. */
    double macroF1() {
        return counted("slug:").stream()
                .map(this::of)
                .filter(tally -> tally.marked() > 0)
                .mapToDouble(Tally::f1)
                .average()
                .orElse(Double.NaN);
    }
}
