package rushlight.situation;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import rushlight.film.Prospect;

/** Some reps of a tape, counted anew from zero. */
final class NarrowedTape implements Tape {
    private final Tape whole;
    private final int[] kept;
    private final Map<Situation, BitSet> fitting = new ConcurrentHashMap<>();

    NarrowedTape(Tape whole, BitSet kept) {
        this.whole = whole;
        this.kept = kept.stream().toArray();
    }

    @Override
    public Prospect prospect() {
        return whole.prospect();
    }

    @Override
    public int size() {
        return kept.length;
    }

    @Override
    public BitSet fitting(Situation situation) {
        return fitting.computeIfAbsent(situation, s -> among(whole.fitting(s)));
    }

    @Override
    public SortedMap<String, BitSet> rows(String facet) {
        SortedMap<String, BitSet> rows = new TreeMap<>();
        whole.rows(facet).forEach((value, reps) -> {
            BitSet his = among(reps);
            if (!his.isEmpty()) {
                rows.put(value, his);
            }
        });
        return rows;
    }

    @Override
    public List<TapedGame> games() {
        return whole.games().stream()
                .map(game -> new TapedGame(game.id(), game.name(), game.date(), game.opponent(), among(game.reps())))
                .filter(game -> !game.reps().isEmpty())
                .toList();
    }

    @Override
    public Sighting sighting(int rep) {
        return whole.sighting(kept[rep]);
    }

    @Override
    public Optional<ReadTwice> readTwice() {
        return whole.readTwice();
    }

    private BitSet among(BitSet reps) {
        BitSet found = new BitSet(kept.length);
        for (int i = 0; i < kept.length; i++) {
            found.set(i, reps.get(kept[i]));
        }
        return found;
    }
}
