package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Weight;
import org.jspecify.annotations.Nullable;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.situation.Situation;
import rushlight.situation.Tape;
import rushlight.situation.Tapes;

/** All film of one state of the index, one reading a rep. Good until the question it was handed to is answered. */
public final class Footage {
    private static final int FEW = 3;

    private final IndexSearcher searcher;
    private final Shelf shelf;
    private final Conditions shared;
    private final AtomicInteger looked = new AtomicInteger();
    private final Map<Class<?>, Object> kept = new ConcurrentHashMap<>();
    private volatile @Nullable Owners owners;

    Footage(IndexSearcher searcher, Segments segments, List<String> evaluators) {
        this.searcher = searcher;
        this.shelf = new Shelf(searcher, segments, evaluators);
        this.shared = Conditions.remembering(searcher, segments);
    }

    /** Everybody of whom there is a log, in order of their ids. */
    public List<Prospect> prospects() {
        return owners().all().stream().map(Shelf.Played::prospect).toList();
    }

    /** How many reps there are, one reading a rep. */
    public int size() {
        return owners().all().stream()
                .flatMap(played -> played.games().stream())
                .mapToInt(game -> game.documents().size())
                .sum();
    }

    /**
     * The tape of one prospect; empty where there is no log of him. Whoever looks at a few only touches their documents;
     * whoever goes on looking finds every condition looked up over the whole index, once.
     */
    public Optional<Tape> tape(String prospect) {
        Conditions conditions = looked.getAndIncrement() < FEW ? Conditions.jumping(searcher) : shared;
        return one(prospect).map(played -> new IndexedTape(searcher, conditions, played));
    }

    /**
     * Everybody's tape, in order of their ids. What one tape looks up in the index serves all others too; several
     * threads may work on the stream, one on each tape.
     */
    public Stream<Tape> tapes() {
        looked.addAndGet(FEW);
        return owners().all().stream().map(played -> new IndexedTape(searcher, shared, played));
    }

    /** The readings that count of one prospect, whole, in the order of his tape. */
    public List<IndexedRep> reps(String prospect) {
        List<IndexedRep> reps = new ArrayList<>();
        try {
            for (Shelf.Played played : one(prospect).stream().toList()) {
                for (Shelf.PlayedGame game : played.games()) {
                    for (int document : game.documents()) {
                        reps.add(Packed.rep(shelf.whole(document)));
                    }
                }
            }
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
        return reps;
    }

    /**
     * How often the event fits where the opportunity does, for everybody who had one. Reps of low confidence count
     * unless the opportunity leaves them out.
     */
    public SortedMap<String, Count> counts(Situation opportunity, Situation event) {
        return counts(opportunity, event, Slice.everything());
    }

    /** The same within a part of the film. */
    public SortedMap<String, Count> counts(Situation opportunity, Situation event, Slice slice) {
        Owners whose = owners();
        int[] opportunities = new int[whose.all().size()];
        int[] events = new int[opportunities.length];
        walk(opportunity, event, slice, (document, happened) -> {
            opportunities[whose.of(document)]++;
            events[whose.of(document)] += happened ? 1 : 0;
        });
        SortedMap<String, Count> counts = new TreeMap<>();
        for (int i = 0; i < opportunities.length; i++) {
            if (opportunities[i] > 0) {
                counts.put(whose.all().get(i).prospect().id(), new Count(opportunities[i], events[i]));
            }
        }
        return counts;
    }

    /** The reps of a part of the film that fit, in the order of the prospects' ids and then of the tape. */
    public FoundReps found(Situation opportunity, Situation event, Slice slice) {
        FoundReps.Builder found = new FoundReps.Builder(searcher, owners(), slice);
        walk(opportunity, event, slice, found::add);
        return found.build();
    }

    /** How many reps of a part of the film have each value of a facet as it was tagged, and how many of those the event. */
    public SortedMap<String, Count> values(String facet, Situation opportunity, Situation event, Slice slice) {
        return new FacetCount(searcher, facet).of(counting -> walk(opportunity, event, slice, counting));
    }

    /** The same for each prospect, by his id. */
    public SortedMap<String, SortedMap<String, Count>> valuesOfEach(
            String facet, Situation opportunity, Situation event, Slice slice) {
        return new FacetCount(searcher, facet).ofEach(owners(), counting -> walk(opportunity, event, slice, counting));
    }

    /** Every game of which there is film, in the order they were played. */
    public List<Game> games() {
        return owners().all().stream()
                .flatMap(played -> played.games().stream())
                .map(Shelf.PlayedGame::game)
                .distinct()
                .sorted(Tapes.ORDER_OF_PLAY)
                .toList();
    }

    /**
     * Something that depends on this state of the film alone: worked out when it is first asked for and kept as long as
     * the film stays as it is.
     *
     * @param type what it is, its name at the same time
     */
    public <T> T once(Class<T> type, Function<Footage, T> work) {
        Object known = kept.get(type);
        if (known == null) {
            T made = work.apply(this);
            Object first = kept.putIfAbsent(type, made);
            known = first == null ? made : first;
        }
        return type.cast(known);
    }

    /** Pages, prospects and notes by their words. */
    public Texts texts() {
        return new Texts(searcher, owners());
    }

    /** What is done with each rep of an opportunity that counts. */
    interface Each {
        void rep(int document, boolean happened) throws IOException;
    }

    private void walk(Situation opportunity, Situation event, Slice slice, Each each) {
        try {
            Owners whose = owners();
            Weight chances = Walk.weight(searcher, slice.with(SituationQuery.of(opportunity)));
            Weight outcomes = Walk.weight(searcher, SituationQuery.of(event));
            for (LeafReaderContext leaf : searcher.getLeafContexts()) {
                DocIdSetIterator chance = Walk.matches(chances, leaf);
                DocIdSetIterator outcome = Walk.matches(outcomes, leaf);
                for (int d = chance.nextDoc(); d != DocIdSetIterator.NO_MORE_DOCS; d = chance.nextDoc()) {
                    if (whose.of(leaf.docBase + d) >= 0) {
                        if (outcome.docID() < d) {
                            outcome.advance(d);
                        }
                        each.rep(leaf.docBase + d, outcome.docID() == d);
                    }
                }
            }
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }

    private Optional<Shelf.Played> one(String prospect) {
        Owners all = owners;
        if (all != null) {
            return all.of(prospect); // everybody's film is laid out already
        }
        try {
            return shelf.one(prospect);
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }

    private synchronized Owners owners() {
        Owners all = owners;
        if (all == null) {
            try {
                all = new Owners(shelf.everybody(), searcher.getIndexReader().maxDoc());
            } catch (IOException e) {
                throw RepIndex.unreadable(e);
            }
            owners = all;
        }
        return all;
    }
}
