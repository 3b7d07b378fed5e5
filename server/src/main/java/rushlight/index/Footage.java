package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Weight;
import org.jspecify.annotations.Nullable;
import rushlight.film.Prospect;
import rushlight.situation.Situation;
import rushlight.situation.Tape;

/** All film of one state of the index, one reading a rep. Good until the question it was handed to is answered. */
public final class Footage {
    private static final int FEW = 3;

    private final IndexSearcher searcher;
    private final Shelf shelf;
    private final Conditions shared;
    private final AtomicInteger looked = new AtomicInteger();
    private @Nullable List<Shelf.Played> everybody;

    /** Whose rep each document is, by his place among all; below zero where the document does not count. */
    private int @Nullable [] owners;

    Footage(IndexSearcher searcher, List<String> evaluators) {
        this.searcher = searcher;
        this.shelf = new Shelf(searcher, evaluators);
        this.shared = Conditions.remembering(searcher);
    }

    /** Everybody of whom there is a log, in order of their ids. */
    public List<Prospect> prospects() {
        return everybody().stream().map(Shelf.Played::prospect).toList();
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
        return everybody().stream().map(played -> new IndexedTape(searcher, shared, played));
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
        try {
            int[] owner = owners();
            int[] opportunities = new int[everybody().size()];
            int[] events = new int[opportunities.length];
            Weight chances = Walk.weight(searcher, SituationQuery.of(opportunity));
            Weight outcomes = Walk.weight(searcher, SituationQuery.of(event));
            for (LeafReaderContext leaf : searcher.getLeafContexts()) {
                DocIdSetIterator chance = Walk.matches(chances, leaf);
                DocIdSetIterator outcome = Walk.matches(outcomes, leaf);
                for (int d = chance.nextDoc(); d != DocIdSetIterator.NO_MORE_DOCS; d = chance.nextDoc()) {
                    int his = owner[leaf.docBase + d];
                    if (his >= 0) {
                        opportunities[his]++;
                        if (outcome.docID() < d) {
                            outcome.advance(d);
                        }
                        events[his] += outcome.docID() == d ? 1 : 0;
                    }
                }
            }
            return named(opportunities, events);
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }

    private SortedMap<String, Count> named(int[] opportunities, int[] events) {
        SortedMap<String, Count> counts = new TreeMap<>();
        for (int i = 0; i < opportunities.length; i++) {
            if (opportunities[i] > 0) {
                counts.put(everybody().get(i).prospect().id(), new Count(opportunities[i], events[i]));
            }
        }
        return counts;
    }

    private Optional<Shelf.Played> one(String prospect) {
        try {
            return shelf.played(Shelf.of(prospect)).stream().findFirst();
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }

    private synchronized List<Shelf.Played> everybody() {
        if (everybody == null) {
            try {
                everybody = shelf.played(new MatchAllDocsQuery());
            } catch (IOException e) {
                throw RepIndex.unreadable(e);
            }
        }
        return everybody;
    }

    private synchronized int[] owners() {
        if (owners == null) {
            List<Shelf.Played> all = everybody();
            int[] byDocument = new int[searcher.getIndexReader().maxDoc()];
            Arrays.fill(byDocument, -1);
            for (int i = 0; i < all.size(); i++) {
                for (Shelf.PlayedGame game : all.get(i).games()) {
                    for (int document : game.documents()) {
                        byDocument[document] = i;
                    }
                }
            }
            owners = byDocument;
        }
        return owners;
    }
}
