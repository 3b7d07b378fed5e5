package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.ToIntFunction;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.search.IndexSearcher;
import org.jspecify.annotations.Nullable;
import rushlight.film.Prospect;
import rushlight.situation.ReadTwice;
import rushlight.situation.ReadingChoice;
import rushlight.situation.Sighting;
import rushlight.situation.Situation;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;

/** A tape that reads from the index only what is asked of it. For one thread, while the index is being read. */
final class IndexedTape implements Tape {
    private final IndexSearcher searcher;
    private final Conditions conditions;
    private final Shelf.Played played;
    private final Prospect prospect;
    private final List<TapedGame> games = new ArrayList<>();
    private final int size;

    /** Document numbers from the smallest up, and beside each the place of its rep on the tape. */
    private final int[] documents;

    private final int[] reps;

    private final Map<Situation, BitSet> fitting = new HashMap<>();
    private List<Sighting> sightings = List.of();
    private @Nullable ReadTwice twice;

    IndexedTape(IndexSearcher searcher, Conditions conditions, Shelf.Played played) {
        this.searcher = searcher;
        this.conditions = conditions;
        this.played = played;
        this.prospect = played.prospect();
        long[] documentAndRep = new long
                [played.games().stream().mapToInt(g -> g.documents().size()).sum()];
        int rep = 0;
        for (Shelf.PlayedGame game : played.games()) {
            BitSet its = new BitSet();
            for (int document : game.documents()) {
                its.set(rep);
                documentAndRep[rep] = (long) document << Integer.SIZE | rep;
                rep++;
            }
            games.add(new TapedGame(
                    game.game().id(),
                    game.game().name(),
                    game.game().date(),
                    game.game().opponent(),
                    its));
        }
        Arrays.sort(documentAndRep);
        this.size = rep;
        this.documents = Arrays.stream(documentAndRep)
                .mapToInt(pair -> (int) (pair >>> Integer.SIZE))
                .toArray();
        this.reps = Arrays.stream(documentAndRep).mapToInt(pair -> (int) pair).toArray();
    }

    @Override
    public Prospect prospect() {
        return prospect;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public List<TapedGame> games() {
        return Collections.unmodifiableList(games);
    }

    @Override
    public BitSet fitting(Situation situation) {
        BitSet known = fitting.get(situation);
        if (known == null) {
            known = found(situation);
            fitting.put(situation, known);
        }
        return known;
    }

    /** Conditions are looked up once; what is made of them is cut from their sets. */
    private BitSet found(Situation situation) {
        if (situation instanceof Situation.And and) {
            BitSet all = everyRep();
            and.parts().forEach(part -> all.and(fitting(part)));
            return all;
        }
        if (situation instanceof Situation.Or or) {
            BitSet some = new BitSet(size);
            or.parts().forEach(part -> some.or(fitting(part)));
            return some;
        }
        if (situation instanceof Situation.Not not) {
            BitSet others = everyRep();
            others.andNot(fitting(not.inner()));
            return others;
        }
        IntPredicate meets = conditions.of(situation);
        BitSet found = new BitSet(size);
        for (int i = 0; i < size; i++) {
            if (meets.test(documents[i])) {
                found.set(reps[i]);
            }
        }
        return found;
    }

    private BitSet everyRep() {
        BitSet all = new BitSet(size);
        all.set(0, size);
        return all;
    }

    @Override
    public SortedMap<String, BitSet> rows(String facet) {
        SortedMap<String, BitSet> rows = new TreeMap<>();
        each(leaf -> {
            SortedSetDocValues values = DocValues.getSortedSet(leaf.reader(), Fields.exact(facet));
            return (document, rep) -> {
                if (values.advanceExact(document)) {
                    for (int i = 0; i < values.docValueCount(); i++) {
                        String value = values.lookupOrd(values.nextOrd()).utf8ToString();
                        rows.computeIfAbsent(value, v -> new BitSet(size)).set(rep);
                    }
                }
            };
        });
        return Collections.unmodifiableSortedMap(rows);
    }

    @Override
    public Sighting sighting(int rep) {
        if (sightings.isEmpty()) {
            Sighting[] all = new Sighting[size];
            each(leaf -> {
                BinaryDocValues values = DocValues.getBinary(leaf.reader(), Fields.SIGHTING);
                return (document, at) -> {
                    values.advanceExact(document);
                    all[at] = Packed.sighting(values.binaryValue());
                };
            });
            sightings = List.of(all);
        }
        return sightings.get(rep);
    }

    @Override
    public Optional<ReadTwice> readTwice() {
        if (twice == null
                && played.games().stream().anyMatch(game -> !game.twice().isEmpty())) {
            twice = new ReadTwice(readBy(ReadingChoice.Two::first), readBy(ReadingChoice.Two::second));
        }
        return Optional.ofNullable(twice);
    }

    private Tape readBy(ToIntFunction<ReadingChoice.Two> one) {
        return new IndexedTape(
                searcher,
                conditions,
                new Shelf.Played(
                        prospect,
                        played.games().stream()
                                .map(game -> new Shelf.PlayedGame(
                                        game.game(),
                                        game.twice().stream()
                                                .map(one::applyAsInt)
                                                .toList(),
                                        List.of()))
                                .toList()));
    }

    /** What is done with each rep of a segment. */
    private interface Each {
        void rep(int document, int rep) throws IOException;
    }

    /** What is done when a segment begins. */
    private interface Begin {
        Each segment(LeafReaderContext leaf) throws IOException;
    }

    private void each(Begin begin) {
        List<LeafReaderContext> leaves = searcher.getLeafContexts();
        int of = -1;
        Each each = (document, rep) -> {};
        try {
            for (int i = 0; i < size; i++) {
                int its = ReaderUtil.subIndex(documents[i], leaves);
                if (its != of) {
                    of = its;
                    each = begin.segment(leaves.get(of));
                }
                each.rep(documents[i] - leaves.get(of).docBase, reps[i]);
            }
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }
}
