package rushlight.ask;

import java.util.Locale;
import java.util.OptionalDouble;
import rushlight.film.Prospect;

/**
 * Only players of such a size.
 *
 * @param measure what is measured
 * @param bound on which side of the value
 * @param value in centimeters or kilograms
 * @param words the value as the question has it
 */
public record ManSize(Measure measure, Bound bound, double value, String words) implements Filter.OfMan {
    /** In centimeters or kilograms: less than any scale tells, and more than is lost between inches and centimeters. */
    private static final double SAME = 0.05;

    /** What of a man is measured. */
    public enum Measure {
        HEIGHT,
        WEIGHT;

        /** The word as it is written in answers and in {@code lexicon/sizes.tsv}. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }

        private OptionalDouble of(Prospect prospect) {
            return this == HEIGHT ? prospect.heightCm() : prospect.weightKg();
        }
    }

    /** On which side of the value a man is to be. */
    public enum Bound {
        AT_LEAST,
        OVER,
        AT_MOST,
        UNDER;

        /** The word as it is written in answers, such as {@code at-least}. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    @Override
    public boolean fits(Prospect prospect) {
        OptionalDouble his = measure.of(prospect);
        double over = his.orElse(value) - value;
        return his.isPresent()
                && switch (bound) {
                    case AT_LEAST -> over > -SAME;
                    case OVER -> over > SAME;
                    case AT_MOST -> over < SAME;
                    case UNDER -> over < -SAME;
                };
    }
}
