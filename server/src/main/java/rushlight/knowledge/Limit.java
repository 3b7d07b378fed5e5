package rushlight.knowledge;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A number that practice keeps to.
 *
 * @param slug the limit
 * @param kind what is limited, such as {@code contact-minutes-a-week}
 * @param what the same in words
 * @param bound whether the number is the most or the least
 * @param amount the number, 0 or more
 * @param unit its unit, such as {@code min}
 * @param level for the highest contact level: that level; the number is its rank
 * @param seasonPart the part of the year it holds in; absent where it holds all year
 * @param range the days, weeks or heat it holds for; absent where it always holds
 * @param note what else is said of it; empty where nothing is
 * @param support {@code strong}, {@code fair} or {@code common-practice}
 * @param sources where it comes from
 * @param local whether the user's own file added it
 */
public record Limit(
        String slug,
        String kind,
        String what,
        Bound bound,
        BigDecimal amount,
        String unit,
        Optional<ContactLevel> level,
        Optional<String> seasonPart,
        Optional<Range> range,
        String note,
        String support,
        List<Source> sources,
        boolean local) {
    /** Whether a number is the most or the least. */
    public enum Bound {
        /** Not more. */
        AT_MOST,
        /** Not less. */
        AT_LEAST
    }

    /**
     * Where on a scale a limit holds, both ends included.
     *
     * @param of what is counted: {@code day}, {@code week} or {@code heat} (wet-bulb globe temperature, degrees Fahrenheit)
     * @param from where it begins; absent where it has no beginning
     * @param to where it ends; absent where it has no end
     */
    public record Range(String of, Optional<BigDecimal> from, Optional<BigDecimal> to) {
        /** Whether a value of the scale lies in the range. */
        public boolean holds(BigDecimal value) {
            return from.filter(f -> f.compareTo(value) > 0).isEmpty()
                    && to.filter(t -> t.compareTo(value) < 0).isEmpty();
        }
    }

    public Limit {
        sources = List.copyOf(sources);
    }

    /** Whether the limit holds in a part of the year. */
    public boolean holdsIn(String part) {
        return seasonPart.filter(p -> !p.equals(part)).isEmpty();
    }
}
