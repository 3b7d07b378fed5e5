package rushlight.evidence.raters;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What raters said of units.
 *
 * @param units a row a unit, with a place for every rater; empty where that rater did not rate it
 * @param <T> what a label is; two labels are the same by {@code equals}
 */
public record Ratings<T>(List<List<Optional<T>>> units) {
    /**
     * @throws IllegalArgumentException where two units have places for different numbers of raters, or for fewer than two
     */
    public Ratings {
        units = List.copyOf(units);
        if (units.stream().anyMatch(unit -> unit.size() < 2)
                || units.stream().map(List::size).distinct().count() > 1) {
            throw new IllegalArgumentException("Each unit has a place for each of the same two or more raters.");
        }
    }

    /** Two raters, nothing left out: the first label is the first rater's. */
    public static <T> Ratings<T> pairs(List<Map.Entry<T, T>> said) {
        return new Ratings<>(said.stream()
                .map(pair -> List.of(Optional.of(pair.getKey()), Optional.of(pair.getValue())))
                .toList());
    }

    /** The units that two raters or more have rated: only those can agree. */
    public Ratings<T> common() {
        return new Ratings<>(units.stream()
                .filter(unit -> unit.stream().flatMap(Optional::stream).count() > 1)
                .toList());
    }

    /** Units in which all who rated gave the same label. */
    public int unanimous() {
        return (int) common().units().stream()
                .filter(unit ->
                        unit.stream().flatMap(Optional::stream).distinct().count() == 1)
                .count();
    }

    /** Every label that was given. */
    public Set<T> labels() {
        Set<T> all = new HashSet<>();
        units.forEach(unit -> unit.stream().flatMap(Optional::stream).forEach(all::add));
        return all;
    }

    /** The share of the most given label among all labels given, 0 to 1; 0 where nothing was rated. */
    public double largestShare() {
        Map<T, Integer> counts = new LinkedHashMap<>();
        units.forEach(
                unit -> unit.stream().flatMap(Optional::stream).forEach(label -> counts.merge(label, 1, Integer::sum)));
        int all = counts.values().stream().mapToInt(Integer::intValue).sum();
        return all == 0
                ? 0
                : (double) counts.values().stream()
                                .mapToInt(Integer::intValue)
                                .max()
                                .orElse(0)
                        / all;
    }

    /** The same units by their places, a place as often as it is named. */
    Ratings<T> at(int[] places) {
        List<List<Optional<T>>> some = new ArrayList<>(places.length);
        for (int place : places) {
            some.add(units.get(place));
        }
        return new Ratings<>(some);
    }
}
