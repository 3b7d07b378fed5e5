package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.MatchNoDocsQuery;
import org.apache.lucene.search.Query;
import rushlight.situation.Sighting;

/**
 * The reps a question found, in the order of the prospects' ids and of the tape. What is to be seen of a rep is read when
 * someone asks for it. Good until the question is answered.
 */
public final class FoundReps {
    private static final Marked NOTHING = new Marked("", List.of());

    private final IndexSearcher searcher;
    private final Owners owners;
    private final Query asked;
    private final long[] keys;
    private final long[] events;

    private FoundReps(IndexSearcher searcher, Owners owners, Query asked, long[] keys, long[] events) {
        this.searcher = searcher;
        this.owners = owners;
        this.asked = asked;
        this.keys = keys;
        this.events = events;
    }

    /** Gathers reps in whatever order they come. */
    static final class Builder {
        private final IndexSearcher searcher;
        private final Owners owners;
        private final Query asked;
        private long[] keys = new long[64];
        private long[] events = new long[64];
        private int size;
        private int happened;

        Builder(IndexSearcher searcher, Owners owners, Slice slice) {
            this.searcher = searcher;
            this.owners = owners;
            this.asked = slice.notes().map(TextQuery::phraseOfANote).orElseGet(MatchNoDocsQuery::new);
        }

        void add(int document, boolean event) {
            keys = roomFor(keys, size);
            keys[size++] = owners.key(document);
            if (event) {
                events = roomFor(events, happened);
                events[happened++] = owners.key(document);
            }
        }

        private static long[] roomFor(long[] some, int size) {
            return size < some.length ? some : Arrays.copyOf(some, 2 * size);
        }

        FoundReps build() {
            Arrays.sort(keys, 0, size);
            Arrays.sort(events, 0, happened);
            return new FoundReps(searcher, owners, asked, Arrays.copyOf(keys, size), Arrays.copyOf(events, happened));
        }
    }

    /** How many could have had the event. */
    public int size() {
        return keys.length;
    }

    /** How many had it. */
    public int events() {
        return events.length;
    }

    /** Some of those that had the event, with what was noted of them. */
    public List<FoundRep> events(int from, int most) {
        List<FoundRep> reps = new ArrayList<>();
        for (int i = from; i < events.length && i - from < most; i++) {
            reps.add(rep(searcher, owners, asked, events[i], true));
        }
        return reps;
    }

    /** All that could have had the event, without notes. */
    public List<FoundRep> all() {
        List<FoundRep> reps = new ArrayList<>();
        Sightings sightings = new Sightings(searcher);
        try {
            for (long key : keys) {
                reps.add(new FoundRep(
                        owners.played(key).prospect(),
                        owners.game(key),
                        sightings.of(owners.document(key)),
                        Arrays.binarySearch(events, key) >= 0,
                        NOTHING));
            }
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
        return reps;
    }

    /** One rep with its note, in which the query's words are marked. */
    static FoundRep rep(IndexSearcher searcher, Owners owners, Query asked, long key, boolean event) {
        int document = owners.document(key);
        try {
            Marked note = new Marker().mark(Fields.NOTE, asked, Texts.note(searcher, document));
            return new FoundRep(
                    owners.played(key).prospect(), owners.game(key), sighting(searcher, document), event, note);
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }

    private static Sighting sighting(IndexSearcher searcher, int document) throws IOException {
        return new Sightings(searcher).of(document);
    }

    /** Reads sightings; quickest where documents are asked for from the smallest up. */
    private static final class Sightings {
        private final List<LeafReaderContext> leaves;
        private int leaf = -1;
        private int last = -1;
        private BinaryDocValues values = DocValues.emptyBinary();

        Sightings(IndexSearcher searcher) {
            this.leaves = searcher.getLeafContexts();
        }

        Sighting of(int document) throws IOException {
            int its = ReaderUtil.subIndex(document, leaves);
            if (its != leaf || document <= last) {
                leaf = its;
                values = DocValues.getBinary(leaves.get(its).reader(), Fields.SIGHTING);
            }
            last = document;
            values.advanceExact(document - leaves.get(its).docBase);
            return Packed.sighting(values.binaryValue());
        }
    }
}
