package rushlight.evidence.raters;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.dkpro.statistics.agreement.coding.CodingAnnotationStudy;
import org.dkpro.statistics.agreement.coding.KrippendorffAlphaAgreement;
import org.dkpro.statistics.agreement.distance.IDistanceFunction;
import org.dkpro.statistics.agreement.distance.OrdinalDistanceFunction;
import rushlight.evidence.Interval;

/**
 * Krippendorff's alpha, 1 - observed / expected disagreement: 1 is full agreement, 0 what chance would give, below 0 worse
 * than chance (Krippendorff 2004; computed by the DKPro library). Undefined, and so empty, where all labels are the same.
 */
public final class Alpha {
    private static final int RESAMPLES = 400;
    private static final long SEED = 20_251;
    private static final double TAIL = 0.05;

    private Alpha() {}

    /** Alpha by a distance of labels. */
    public static <T> OptionalDouble of(Ratings<T> ratings, Distance<T> distance) {
        return by(ratings.common(), function(distance));
    }

    /** Alpha of labels that have an order, by their places in it from 0 (Krippendorff's ordinal metric). */
    public static OptionalDouble ordinal(Ratings<Integer> ratings) {
        return by(ratings.common(), new OrdinalDistanceFunction());
    }

    /**
     * The middle 90 % of alpha over {@value #RESAMPLES} resamples of the units with replacement (always the same draws);
     * empty where alpha itself is undefined. Resamples in which it is undefined are left out.
     */
    public static <T> Optional<Interval> interval(Ratings<T> ratings, Distance<T> distance) {
        return spread(ratings.common(), function(distance));
    }

    /** The same for {@link #ordinal}. */
    public static Optional<Interval> ordinalInterval(Ratings<Integer> ratings) {
        return spread(ratings.common(), new OrdinalDistanceFunction());
    }

    private static <T> OptionalDouble by(Ratings<T> common, IDistanceFunction distance) {
        if (common.units().isEmpty() || common.labels().size() < 2) {
            return OptionalDouble.empty();
        }
        CodingAnnotationStudy study =
                new CodingAnnotationStudy(common.units().get(0).size());
        for (List<Optional<T>> unit : common.units()) {
            study.addItemAsArray(
                    unit.stream().map(label -> label.orElse(null)).toArray());
        }
        return OptionalDouble.of(new KrippendorffAlphaAgreement(study, distance).calculateAgreement());
    }

    private static <T> Optional<Interval> spread(Ratings<T> common, IDistanceFunction distance) {
        if (by(common, distance).isEmpty()) {
            return Optional.empty();
        }
        int units = common.units().size();
        Random random = new Random(SEED);
        double[] drawn = IntStream.range(0, RESAMPLES)
                .mapToObj(draw -> random.ints(units, 0, units).toArray())
                .map(common::at)
                .map(sample -> by(sample, distance))
                .flatMapToDouble(OptionalDouble::stream)
                .sorted()
                .toArray();
        return drawn.length == 0 ? Optional.empty() : Optional.of(middle(drawn));
    }

    private static Interval middle(double[] sorted) {
        int cut = (int) Math.floor(TAIL * (sorted.length - 1));
        return new Interval(sorted[cut], sorted[sorted.length - 1 - cut]);
    }

    @SuppressWarnings("unchecked") // the study holds labels of one type alone
    private static <T> IDistanceFunction function(Distance<T> distance) {
        return (study, one, other) -> distance.between((T) one, (T) other);
    }
}
