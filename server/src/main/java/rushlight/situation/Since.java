package rushlight.situation;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A tape cut in two before one of its games.
 *
 * @param whole the tape
 * @param before the reps of the games before it
 * @param after the reps of that game and of those after it
 * @param first the game that the second half begins with
 * @param untold games without a date, where a date was asked for: they are in neither half
 */
public record Since(Tape whole, Tape before, Tape after, TapedGame first, List<TapedGame> untold) {
    public Since {
        untold = List.copyOf(untold);
    }

    /**
     * A tape cut before a game.
     *
     * @param gameOrDate id or name of the game, or a date such as 2025-10-01: then the first game on it or after it
     * @return empty where the tape has no such game
     */
    public static Optional<Since> at(Tape whole, String gameOrDate) {
        List<TapedGame> games = whole.games();
        Optional<Integer> named = IntStream.range(0, games.size())
                .boxed()
                .filter(i -> isNamed(games.get(i), gameOrDate))
                .findFirst();
        if (named.isPresent()) {
            return Optional.of(cut(whole, games, named.orElseThrow(), List.of()));
        }
        return date(gameOrDate).flatMap(date -> {
            List<TapedGame> dated =
                    games.stream().filter(game -> game.date().isPresent()).toList();
            return IntStream.range(0, dated.size())
                    .boxed()
                    .filter(i -> !dated.get(i).date().orElseThrow().isBefore(date))
                    .findFirst()
                    .map(i -> cut(
                            whole,
                            dated,
                            i,
                            games.stream().filter(game -> game.date().isEmpty()).toList()));
        });
    }

    private static Since cut(Tape whole, List<TapedGame> games, int at, List<TapedGame> untold) {
        return new Since(
                whole,
                of(whole, games.subList(0, at)),
                of(whole, games.subList(at, games.size())),
                games.get(at),
                untold);
    }

    private static Tape of(Tape whole, List<TapedGame> games) {
        BitSet kept = new BitSet(whole.size());
        games.forEach(game -> kept.or(game.reps()));
        return new NarrowedTape(whole, kept);
    }

    private static boolean isNamed(TapedGame game, String name) {
        return game.id().equals(name) || game.name().equalsIgnoreCase(name);
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
