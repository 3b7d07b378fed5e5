package rushlight.situation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepFacts;

/** Makes tapes of logs in memory. */
public final class Tapes {
    /** Games in the order they were played: by date, those without one last, then by id. */
    public static final Comparator<Game> ORDER_OF_PLAY = Comparator.comparing(
                    (Game game) -> game.date().map(Object::toString).orElse("~"))
            .thenComparing(Game::id);

    private Tapes() {}

    /**
     * One tape for each prospect, in order of their ids. Where evaluators watched the same game, those of earlier logs
     * are believed first.
     */
    public static List<Tape> of(Collection<LogFacts> logs) {
        List<String> evaluators =
                logs.stream().map(log -> log.log().evaluator()).distinct().toList();
        return of(logs, evaluators);
    }

    /** The same where the evaluators that stand earlier in the list are believed first. */
    public static List<Tape> of(Collection<LogFacts> logs, List<String> evaluators) {
        Map<String, List<LogFacts>> byProspect = logs.stream()
                .collect(Collectors.groupingBy(log -> log.log().prospect().id(), TreeMap::new, Collectors.toList()));
        ReadingChoice choice = new ReadingChoice(evaluators);
        return byProspect.values().stream().map(his -> tape(his, choice)).toList();
    }

    private static Tape tape(List<LogFacts> logs, ReadingChoice choice) {
        Prospect prospect = logs.get(0).log().prospect();
        Map<Game, List<LogFacts>> games = new TreeMap<>(ORDER_OF_PLAY);
        logs.forEach(log ->
                games.computeIfAbsent(log.log().game(), g -> new ArrayList<>()).add(log));
        List<TapedGame> taped = new ArrayList<>();
        List<Sighting> sightings = new ArrayList<>();
        List<RepFacts> facts = new ArrayList<>();
        Readings first = new Readings();
        Readings second = new Readings();
        games.forEach((game, watched) -> {
            List<Reading> readings =
                    watched.stream().flatMap(l -> l.log().readings().stream()).toList();
            List<RepFacts> all =
                    watched.stream().flatMap(l -> l.facts().stream()).toList();
            BitSet reps = new BitSet();
            for (int i : choice.of(readings)) {
                reps.set(facts.size());
                sightings.add(Sighting.of(readings.get(i), game.name()));
                facts.add(all.get(i));
            }
            for (ReadingChoice.Two two : choice.twice(readings)) {
                first.add(readings.get(two.first()), all.get(two.first()), game);
                second.add(readings.get(two.second()), all.get(two.second()), game);
            }
            taped.add(new TapedGame(game.id(), game.name(), game.date(), game.opponent(), reps));
        });
        Optional<ReadTwice> twice = first.facts.isEmpty()
                ? Optional.empty()
                : Optional.of(new ReadTwice(first.of(prospect), second.of(prospect)));
        return new ListedTape(prospect, taped, sightings, facts, twice);
    }

    /** Readings of one evaluator of two, one after the other. */
    private static final class Readings {
        private final List<Sighting> sightings = new ArrayList<>();
        private final List<RepFacts> facts = new ArrayList<>();

        void add(Reading reading, RepFacts its, Game game) {
            sightings.add(Sighting.of(reading, game.name()));
            facts.add(its);
        }

        Tape of(Prospect prospect) {
            return Tape.of(prospect, List.of(), sightings, facts);
        }
    }
}
