package rushlight.situation;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import rushlight.film.Prospect;
import rushlight.film.RepFacts;

/** A tape whose facts are all in memory. */
final class ListedTape implements Tape {
    private final Prospect prospect;
    private final List<TapedGame> games;
    private final List<Sighting> sightings;
    private final List<RepFacts> facts;
    private final Optional<ReadTwice> readTwice;
    private final Map<Situation, BitSet> fitting = new ConcurrentHashMap<>();

    ListedTape(
            Prospect prospect,
            List<TapedGame> games,
            List<Sighting> sightings,
            List<RepFacts> facts,
            Optional<ReadTwice> readTwice) {
        if (sightings.size() != facts.size()) {
            throw new IllegalArgumentException(
                    "Each rep has one sighting, but there are " + sightings.size() + " for " + facts.size() + " reps.");
        }
        this.prospect = prospect;
        this.games = List.copyOf(games);
        this.sightings = List.copyOf(sightings);
        this.facts = List.copyOf(facts);
        this.readTwice = readTwice;
    }

    @Override
    public Prospect prospect() {
        return prospect;
    }

    @Override
    public int size() {
        return facts.size();
    }

    @Override
    public BitSet fitting(Situation situation) {
        return fitting.computeIfAbsent(situation, this::scan);
    }

    private BitSet scan(Situation situation) {
        BitSet found = new BitSet(facts.size());
        for (int i = 0; i < facts.size(); i++) {
            if (situation.fits(facts.get(i))) {
                found.set(i);
            }
        }
        return found;
    }

    @Override
    public SortedMap<String, BitSet> rows(String facet) {
        SortedMap<String, BitSet> rows = new TreeMap<>();
        for (int i = 0; i < facts.size(); i++) {
            int rep = i;
            facts.get(i).tagged(facet).forEach(value -> row(rows, value).set(rep));
            facts.get(i)
                    .number(facet)
                    .ifPresent(number -> row(rows, Integer.toString(number)).set(rep));
        }
        return Collections.unmodifiableSortedMap(rows);
    }

    private BitSet row(SortedMap<String, BitSet> rows, String value) {
        return rows.computeIfAbsent(value, v -> new BitSet(facts.size()));
    }

    @Override
    public List<TapedGame> games() {
        return games;
    }

    @Override
    public Optional<ReadTwice> readTwice() {
        return readTwice;
    }

    @Override
    public Sighting sighting(int rep) {
        return sightings.get(rep);
    }
}
