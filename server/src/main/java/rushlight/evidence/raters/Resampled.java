package rushlight.evidence.raters;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import rushlight.evidence.Interval;

/** The spread of a coefficient over resamples of the units with replacement (percentile bootstrap); always the same draws. */
final class Resampled {
    static final int TIMES = 400;

    private static final long SEED = 20_251;
    private static final double TAIL = 0.05;

    private Resampled() {}

    /** The middle 90 %; empty where the coefficient is undefined in every resample. */
    static <T> Optional<Interval> interval(Ratings<T> ratings, Function<Ratings<T>, OptionalDouble> coefficient) {
        return interval(ratings.units().size(), places -> coefficient.apply(ratings.at(places)));
    }

    /** The same where the coefficient is told the places of the units that were drawn. */
    static Optional<Interval> interval(int units, Function<int[], OptionalDouble> coefficient) {
        Random random = new Random(SEED);
        double[] drawn = IntStream.range(0, TIMES)
                .mapToObj(draw -> random.ints(units, 0, units).toArray())
                .map(coefficient)
                .flatMapToDouble(OptionalDouble::stream)
                .sorted()
                .toArray();
        if (drawn.length == 0) {
            return Optional.empty();
        }
        int cut = (int) Math.floor(TAIL * (drawn.length - 1));
        return Optional.of(new Interval(drawn[cut], drawn[drawn.length - 1 - cut]));
    }
}
