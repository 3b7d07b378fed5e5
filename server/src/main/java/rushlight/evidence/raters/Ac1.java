package rushlight.evidence.raters;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Interval;

/**
 * Gwet's AC1: agreement beyond chance that does not fall where nearly every unit carries one label (Gwet 2008, with gaps as
 * in his handbook of 2014). Chance is sum p(1 - p) / (q - 1) over the q labels.
 */
public final class Ac1 {
    private Ac1() {}

    /** AC1 over all units; empty where fewer than two labels were given or no unit has two ratings. */
    public static <T> OptionalDouble of(Ratings<T> ratings) {
        return of(ratings, ratings.labels().size());
    }

    /** The middle 90 % over {@value Resampled#TIMES} resamples of the units; empty where AC1 is. */
    public static <T> Optional<Interval> interval(Ratings<T> ratings) {
        int labels = ratings.labels().size();
        return of(ratings).isEmpty() ? Optional.empty() : Resampled.interval(ratings, some -> of(some, labels));
    }

    /** The same where {@code labels} could have been given, some of them perhaps never used; 2 or more. */
    public static <T> OptionalDouble of(Ratings<T> ratings, int labels) {
        Map<T, Double> share = new HashMap<>();
        List<Double> agreed = new ArrayList<>();
        int rated = 0;
        for (List<Optional<T>> unit : ratings.units()) {
            Map<T, Integer> counts = new HashMap<>();
            unit.stream().flatMap(Optional::stream).forEach(label -> counts.merge(label, 1, Integer::sum));
            int all = counts.values().stream().mapToInt(Integer::intValue).sum();
            if (all > 0) {
                rated++;
                counts.forEach((label, count) -> share.merge(label, (double) count / all, Double::sum));
            }
            if (all > 1) {
                agreed.add(counts.values().stream()
                                .mapToDouble(count -> count * (count - 1.0))
                                .sum()
                        / (all * (all - 1.0)));
            }
        }
        if (labels < 2 || agreed.isEmpty()) {
            return OptionalDouble.empty();
        }
        int units = rated;
        double chance = share.values().stream()
                        .mapToDouble(sum -> sum / units * (1 - sum / units))
                        .sum()
                / (labels - 1);
        double observed =
                agreed.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        return OptionalDouble.of((observed - chance) / (1 - chance));
    }
}
