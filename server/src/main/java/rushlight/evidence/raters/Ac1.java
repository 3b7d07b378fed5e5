package rushlight.evidence.raters;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
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
        List<T> labels = List.copyOf(ratings.labels());
        List<Unit> units = units(ratings, labels);
        return of(units, labels.size()).isEmpty()
                ? Optional.empty()
                : Resampled.interval(
                        units.size(),
                        places -> of(IntStream.of(places).mapToObj(units::get).toList(), labels.size()));
    }

    /** The same where {@code labels} could have been given, some of them perhaps never used; 2 or more. */
    public static <T> OptionalDouble of(Ratings<T> ratings, int labels) {
        return of(units(ratings, List.copyOf(ratings.labels())), labels);
    }

    /**
     * What one unit adds, wherever it is drawn.
     *
     * @param share of its labels, in the order of all labels; empty where nobody rated it
     * @param agreed the pairs of its raters who agree, as a part of all its pairs; empty under two
     */
    @SuppressWarnings("ArrayRecordComponent") // only ever added up, never compared
    private record Unit(double[] share, OptionalDouble agreed) {}

    private static <T> List<Unit> units(Ratings<T> ratings, List<T> labels) {
        List<Unit> units = new ArrayList<>();
        for (List<Optional<T>> unit : ratings.units()) {
            List<T> given = unit.stream().flatMap(Optional::stream).toList();
            int all = given.size();
            double[] counts = labels.stream()
                    .mapToDouble(label -> Collections.frequency(given, label))
                    .toArray();
            OptionalDouble agreed = all < 2
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(DoubleStream.of(counts)
                                    .map(count -> count * (count - 1))
                                    .sum()
                            / (all * (all - 1.0)));
            double[] share = all == 0
                    ? new double[0]
                    : DoubleStream.of(counts).map(count -> count / all).toArray();
            units.add(new Unit(share, agreed));
        }
        return units;
    }

    private static OptionalDouble of(List<Unit> units, int labels) {
        double[] share = new double[labels];
        int rated = 0;
        double agreed = 0;
        int paired = 0;
        for (Unit unit : units) {
            rated += unit.share().length == 0 ? 0 : 1;
            for (int label = 0; label < unit.share().length; label++) {
                share[label] += unit.share()[label];
            }
            if (unit.agreed().isPresent()) {
                agreed += unit.agreed().getAsDouble();
                paired++;
            }
        }
        if (labels < 2 || paired == 0) {
            return OptionalDouble.empty();
        }
        double chance = 0;
        for (double sum : share) {
            chance += sum / rated * (1 - sum / rated);
        }
        chance /= labels - 1;
        return OptionalDouble.of((agreed / paired - chance) / (1 - chance));
    }
}
