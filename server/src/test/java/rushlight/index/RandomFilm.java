package rushlight.index;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Facet;
import rushlight.situation.Facets;
import rushlight.situation.LogFacts;

/** Logs by chance from a seed: values of the right kinds, and no sense in them. */
final class RandomFilm {
    private static final double GIVEN = 0.4;

    private final Random random;
    private final Taxonomy taxonomy;
    private final Map<String, List<String>> values = new HashMap<>();
    private final List<Facet> facets;

    RandomFilm(long seed, Facets facets, Taxonomy taxonomy) {
        this.random = new Random(seed);
        this.taxonomy = taxonomy;
        this.facets = List.copyOf(facets.all());
        for (Facet facet : facets.all()) {
            values.put(facet.name(), facet.values().stream().sorted().toList());
        }
    }

    /** Some games of some prospects; every third game is watched by two. */
    List<LogFacts> logs(int prospects, int games, int reps) {
        List<LogFacts> logs = new ArrayList<>();
        for (int p = 0; p < prospects; p++) {
            for (int g = 0; g < games; g++) {
                logs.add(log("First Eyes", prospect(p), game(g), reps));
                if ((p + g) % 3 == 0) {
                    logs.add(log("Second Eyes", prospect(p), game(g), reps));
                }
            }
        }
        return logs;
    }

    static Prospect prospect(int number) {
        OptionalDouble none = OptionalDouble.empty();
        return new Prospect(
                "p" + number, "Prospect " + number, "edge", OptionalDouble.of(190.5), none, none, "Team", "", "note");
    }

    static Game game(int number) {
        Optional<LocalDate> date = number == 0
                ? Optional.empty()
                : Optional.of(LocalDate.of(2025, 9, 30).minusDays(7L * number));
        return new Game("g" + number, "Game " + number, date, "Opponent " + number, "");
    }

    LogFacts log(String evaluator, Prospect prospect, Game game, int reps) {
        List<Reading> readings = new ArrayList<>();
        List<RepFacts> facts = new ArrayList<>();
        for (int r = 0; r < reps; r++) {
            RepId id = new RepId(prospect.id(), game.id(), "r" + (evaluator.startsWith("S") ? r + reps / 2 : r));
            Reading reading = new Reading(id, evaluator, cells(r), exchange());
            readings.add(reading);
            facts.add(facts(reading));
        }
        Log log = new Log(evaluator, prospect, game, Set.of("faults"), readings, new Log.Source("film.csv", "00"));
        return new LogFacts(log, facts);
    }

    private Map<String, List<String>> cells(int rep) {
        Map<String, List<String>> cells = new HashMap<>();
        if (random.nextBoolean()) {
            cells.put("quarter", List.of(Integer.toString(1 + random.nextInt(2))));
            cells.put("clock", List.of(random.nextInt(15) + ":0" + random.nextInt(10)));
        }
        if (random.nextBoolean()) {
            cells.put("video", List.of("film.webm"));
            cells.put("start", List.of("1:" + (10 + rep)));
            cells.put("end", List.of("1:" + (12 + rep)));
        }
        return cells;
    }

    private List<Step> exchange() {
        return random.nextBoolean()
                ? List.of()
                : List.of(
                        new Step(Step.By.HIM, "bull-rush", Optional.of("inside")),
                        new Step(Step.By.BLOCKER, "anchor", Optional.empty()));
    }

    private RepFacts facts(Reading reading) {
        Map<String, Set<String>> tagged = new HashMap<>();
        Map<String, Set<String>> closed = new HashMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        for (Facet facet : facets) {
            if (random.nextDouble() > GIVEN) {
                continue;
            }
            if (facet.kind() == Facet.Kind.NUMBER) {
                numbers.put(facet.name(), random.nextInt(7));
                continue;
            }
            Set<String> exact = new HashSet<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                List<String> known = values.getOrDefault(facet.name(), List.of());
                exact.add(known.get(random.nextInt(known.size())));
            }
            Set<String> wider = new HashSet<>();
            exact.forEach(value -> wider.addAll(taxonomy.closure(value)));
            tagged.put(facet.name(), exact);
            closed.put(facet.name(), facet.kind() == Facet.Kind.CONCEPT ? wider : exact);
        }
        if (random.nextInt(40) == 0) {
            tagged.put("note", Set.of("x".repeat(40_000)));
        }
        return new RepFacts(reading.rep(), reading.evaluator(), tagged, closed, numbers);
    }
}
