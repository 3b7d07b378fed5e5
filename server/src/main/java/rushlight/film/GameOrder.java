package rushlight.film;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * The order of the reps of one game: by snap, else by quarter and falling clock, else by where they start on the film,
 * else as they came. The first of these that most of the reps have decides; a rep that lacks it stays behind the one it
 * followed.
 */
public final class GameOrder {
    private static final int QUARTER = 100_000;
    private static final double FILM = 1e7;

    private GameOrder() {}

    /** The readings in the order of the game. */
    public static List<Reading> of(List<Reading> readings) {
        return of(readings, reading -> reading);
    }

    /** What stands for readings, such as their places in a list, in the order of the game. */
    public static <T> List<T> of(List<T> all, Function<T, Reading> reading) {
        Map<String, Integer> films = new HashMap<>();
        all.forEach(one -> reading.apply(one).one("video").ifPresent(video -> films.putIfAbsent(video, films.size())));
        List<Function<Reading, Optional<Double>>> orders = List.of(
                GameOrder::snap,
                GameOrder::clock,
                rep -> start(rep, films.getOrDefault(rep.one("video").orElse(""), 0)));
        for (Function<Reading, Optional<Double>> order : orders) {
            Function<T, Optional<Double>> key = reading.andThen(order);
            long having = all.stream().filter(one -> key.apply(one).isPresent()).count();
            if (having * 2 > all.size()) {
                return sorted(all, key);
            }
        }
        return List.copyOf(all);
    }

    private static <T> List<T> sorted(List<T> all, Function<T, Optional<Double>> order) {
        record Placed<T>(double key, T one) {}
        List<Placed<T>> placed = new ArrayList<>(all.size());
        double last = Double.NEGATIVE_INFINITY;
        for (T one : all) {
            last = order.apply(one).orElse(last);
            placed.add(new Placed<>(last, one));
        }
        return placed.stream()
                .sorted(Comparator.comparingDouble(Placed::key))
                .map(Placed::one)
                .toList();
    }

    private static Optional<Double> snap(Reading reading) {
        OptionalInt snap = reading.number("snap");
        return snap.isPresent() ? Optional.of((double) snap.getAsInt()) : Optional.empty();
    }

    private static Optional<Double> clock(Reading reading) {
        OptionalInt quarter = reading.number("quarter");
        Optional<String> clock = reading.one("clock");
        if (quarter.isEmpty() || clock.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble left = Times.seconds(clock.get());
        return left.isPresent()
                ? Optional.of((double) quarter.getAsInt() * QUARTER - left.getAsDouble())
                : Optional.empty();
    }

    private static Optional<Double> start(Reading reading, int film) {
        OptionalDouble start = reading.one("start").map(Times::seconds).orElseGet(OptionalDouble::empty);
        return start.isPresent() ? Optional.of(film * FILM + start.getAsDouble()) : Optional.empty();
    }
}
