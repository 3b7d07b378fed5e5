package rushlight.evidence;

import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Figures that many counts share and that take long to find: shown intervals and outlooks. Safe for many threads; it holds a
 * bounded number of figures and starts anew when it is full, and what it answers is what a fresh reckoning would.
 */
public final class Remembered {
    /** How far ahead an outlook looks: opportunities a scout might still see. */
    public static final int FURTHER = 30;

    private static final int ROOM = 50_000;

    private record Asked(Rate rate, Line line) {}

    private final ConcurrentHashMap<Rate, Interval> shown = new ConcurrentHashMap<>();
    private final ConcurrentHashMap<Asked, OptionalInt> more = new ConcurrentHashMap<>();

    /** The interval that is shown beside a verdict: {@link Rate#jeffreys} at {@link Rate#SHOWN}. */
    public Interval shown(Rate rate) {
        return remember(shown, rate, asked -> asked.jeffreys(Rate.SHOWN));
    }

    /**
     * The fewest further opportunities, 1 to {@link #FURTHER}, that confirm or clear with a chance of at least one half;
     * empty where it takes more than that or the count is settled already.
     */
    public OptionalInt moreNeeded(Rate rate, Line line) {
        return remember(more, new Asked(rate, line), Remembered::reckon);
    }

    private static OptionalInt reckon(Asked asked) {
        if (asked.line.verdict(asked.rate).settled()) {
            return OptionalInt.empty();
        }
        int half = Outlook.of(asked.rate, asked.line, FURTHER).evenChance();
        return half == 0 ? OptionalInt.empty() : OptionalInt.of(half);
    }

    private static <K, V> V remember(ConcurrentHashMap<K, V> known, K asked, Function<K, V> reckon) {
        V found = known.get(asked);
        if (found == null) {
            found = reckon.apply(asked);
            if (known.size() >= ROOM) {
                known.clear();
            }
            known.put(asked, found);
        }
        return found;
    }
}
