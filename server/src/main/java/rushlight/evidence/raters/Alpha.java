package rushlight.evidence.raters;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
    private Alpha() {}

    /** Alpha by a distance of labels. */
    public static <T> OptionalDouble of(Ratings<T> ratings, Distance<T> distance) {
        Numbered numbered = Numbered.of(ratings.common(), distance);
        return by(numbered.ratings(), numbered.distance());
    }

    /** Alpha of labels that have an order, by their places in it from 0 (Krippendorff's ordinal metric). */
    public static OptionalDouble ordinal(Ratings<Integer> ratings) {
        return by(ratings.common(), new OrdinalDistanceFunction());
    }

    /**
     * The middle 90 % of alpha over {@value Resampled#TIMES} resamples of the units with replacement (always the same draws);
     * empty where alpha itself is undefined. Resamples in which it is undefined are left out.
     */
    public static <T> Optional<Interval> interval(Ratings<T> ratings, Distance<T> distance) {
        Numbered numbered = Numbered.of(ratings.common(), distance);
        return spread(numbered.ratings(), numbered.distance());
    }

    /** The same for {@link #ordinal}. */
    public static Optional<Interval> ordinalInterval(Ratings<Integer> ratings) {
        return spread(ratings.common(), new OrdinalDistanceFunction());
    }

    private static OptionalDouble by(Ratings<Integer> common, IDistanceFunction distance) {
        if (common.units().isEmpty() || common.labels().size() < 2) {
            return OptionalDouble.empty();
        }
        CodingAnnotationStudy study =
                new CodingAnnotationStudy(common.units().get(0).size());
        for (List<Optional<Integer>> unit : common.units()) {
            study.addItemAsArray(unit.stream().map(label -> label.orElse(null)).toArray());
        }
        return OptionalDouble.of(new KrippendorffAlphaAgreement(study, distance).calculateAgreement());
    }

    private static Optional<Interval> spread(Ratings<Integer> common, IDistanceFunction distance) {
        OptionalDouble whole = by(common, distance);
        if (whole.isEmpty()) {
            return Optional.empty();
        }
        return common.unanimous() == common.units().size()
                ? Optional.of(new Interval(1, 1))
                : Resampled.interval(common, some -> by(some, distance));
    }

    /** Labels by number, with every distance measured once. */
    private record Numbered(Ratings<Integer> ratings, IDistanceFunction distance) {
        static <T> Numbered of(Ratings<T> ratings, Distance<T> distance) {
            List<T> labels = new ArrayList<>(ratings.labels());
            Map<T, Integer> numbers = new HashMap<>();
            labels.forEach(label -> numbers.put(label, numbers.size()));
            double[][] distances = new double[labels.size()][labels.size()];
            for (int i = 0; i < labels.size(); i++) {
                for (int j = 0; j < labels.size(); j++) {
                    distances[i][j] = distance.between(labels.get(i), labels.get(j));
                }
            }
            return new Numbered(
                    new Ratings<>(ratings.units().stream()
                            .map(unit -> unit.stream()
                                    .map(label -> label.map(numbers::get))
                                    .toList())
                            .toList()),
                    (study, one, other) -> distances[(Integer) one][(Integer) other]);
        }
    }
}
