package rushlight.situation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rushlight.film.GameOrder;
import rushlight.film.Identity;
import rushlight.film.Reading;
import rushlight.film.Reconciled;

/**
 * Which reading of a rep counts where several evaluators watched a game, and the order the reps were played in.
 * Readings are of one rep when its name is the same and quarter, clock and down do not contradict.
 */
public final class ReadingChoice {
    private final List<String> evaluators;

    /**
     * What evaluators have settled on between them is believed first; then evaluators in this order; those not named come
     * after, by name.
     */
    public ReadingChoice(List<String> evaluators) {
        this.evaluators = evaluators.stream().map(Identity::slug).distinct().toList();
    }

    /**
     * Of the readings of one prospect in one game, log by log and each log in its own order: the places of those that
     * count, in the order of the game.
     */
    public List<Integer> of(List<Reading> readings) {
        Map<String, List<Reading>> chosen = new HashMap<>();
        List<Integer> places = new ArrayList<>();
        for (int i : ranked(readings)) {
            Reading reading = readings.get(i);
            List<Reading> same = chosen.computeIfAbsent(reading.rep().rep(), r -> new ArrayList<>());
            if (same.stream().allMatch(other -> contradict(other, reading))) {
                same.add(reading);
                places.add(i);
            }
        }
        return inOrder(places, readings);
    }

    /**
     * Two readings of one rep by two evaluators, by their places; what evaluators have settled on is nobody's reading.
     *
     * @param first of whoever is believed first of the two
     * @param second of the next
     */
    public record Two(int first, int second) {}

    /** Of the same readings: the reps that two evaluators have read, or the first two of more. */
    public List<Two> twice(List<Reading> readings) {
        Map<String, List<Integer>> byRep = new LinkedHashMap<>();
        for (int i : ranked(readings)) {
            if (!Reconciled.is(readings.get(i).evaluator())) {
                byRep.computeIfAbsent(readings.get(i).rep().rep(), r -> new ArrayList<>())
                        .add(i);
            }
        }
        return byRep.values().stream()
                .filter(same -> same.size() > 1 && !contradict(readings.get(same.get(0)), readings.get(same.get(1))))
                .map(same -> new Two(same.get(0), same.get(1)))
                .toList();
    }

    private List<Integer> ranked(List<Reading> readings) {
        return IntStream.range(0, readings.size())
                .boxed()
                .sorted(Comparator.comparingInt((Integer i) -> rank(readings.get(i)))
                        .thenComparing(i -> Identity.slug(readings.get(i).evaluator())))
                .toList();
    }

    private int rank(Reading reading) {
        if (Reconciled.is(reading.evaluator())) {
            return -1;
        }
        int place = evaluators.indexOf(Identity.slug(reading.evaluator()));
        return place < 0 ? evaluators.size() : place;
    }

    private static boolean contradict(Reading one, Reading other) {
        return differ(one, other, "quarter") || differ(one, other, "clock") || differ(one, other, "down");
    }

    private static boolean differ(Reading one, Reading other, String column) {
        Optional<String> here = one.one(column);
        Optional<String> there = other.one(column);
        return here.isPresent() && there.isPresent() && !here.equals(there);
    }

    /** One evaluator's order is that of his log; several logs are merged. */
    private static List<Integer> inOrder(List<Integer> places, List<Reading> readings) {
        boolean merged =
                places.stream().map(i -> readings.get(i).evaluator()).distinct().count() > 1;
        return merged ? GameOrder.of(places, readings::get) : places;
    }
}
