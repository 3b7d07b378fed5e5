package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.StoredFields;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.FixedBitSet;
import org.jspecify.annotations.Nullable;
import rushlight.film.Prospect;
import rushlight.situation.Situation;

/**
 * What was worked out of each segment of the index. Of a segment only documents are ever taken out; so of all this a change of
 * a few logs spoils nothing, and whoever asks next works out the small segment that the change has written. Safe for many
 * threads.
 */
final class Segments {
    private final Map<IndexReader.CacheKey, Known> known = new ConcurrentHashMap<>();

    /**
     * A log that was written into a segment. Documents are numbered within the segment.
     *
     * @param log whose film of which game
     * @param key the same as a key
     * @param head the log's own document; it is taken out together with those of the readings
     * @param readings documents of the readings, in their order
     */
    @SuppressWarnings("ArrayRecordComponent") // only ever read here, never compared
    record Held(IndexedLog log, String key, int head, int[] readings) {}

    /** A prospect that was written into a segment, and his document. */
    record Listed(Prospect prospect, int document) {}

    /** Logs and prospects of a segment, those that were taken out since among them. */
    record Film(List<Held> logs, List<Listed> prospects) {}

    /** Of one segment. */
    private static final class Known {
        private final Map<Situation, FixedBitSet> matches = new ConcurrentHashMap<>();
        private @Nullable Film film;

        private synchronized Film film(IndexSearcher searcher, LeafReaderContext leaf) throws IOException {
            if (film == null) {
                film = new Film(logs(searcher, leaf), prospects(searcher, leaf));
            }
            return film;
        }
    }

    /** The film of a segment. */
    Film film(IndexSearcher searcher, LeafReaderContext leaf) throws IOException {
        return of(leaf).film(searcher, leaf);
    }

    /** The documents of every segment that meet a condition, those that were taken out among them. */
    FixedBitSet[] matching(IndexSearcher searcher, Situation condition) throws IOException {
        List<LeafReaderContext> leaves = searcher.getLeafContexts();
        FixedBitSet[] all = new FixedBitSet[leaves.size()];
        Optional<Weight> weight = Optional.empty();
        for (int i = 0; i < all.length; i++) {
            Map<Situation, FixedBitSet> matches = of(leaves.get(i)).matches;
            FixedBitSet its = matches.get(condition);
            if (its == null) {
                weight = weight.isPresent() ? weight : Optional.of(Walk.weight(searcher, SituationQuery.of(condition)));
                its = matching(weight.get(), leaves.get(i));
                matches.put(condition, its);
            }
            all[i] = its;
        }
        return all;
    }

    private Known of(LeafReaderContext leaf) {
        IndexReader.CacheHelper segment = leaf.reader().getCoreCacheHelper();
        return known.computeIfAbsent(segment.getKey(), key -> {
            segment.addClosedListener(known::remove);
            return new Known();
        });
    }

    private static FixedBitSet matching(Weight weight, LeafReaderContext leaf) throws IOException {
        FixedBitSet found = new FixedBitSet(Math.max(1, leaf.reader().maxDoc()));
        found.or(Walk.matches(weight, leaf));
        return found;
    }

    /** A log and its readings are written as one block, the log's own document first; a merge of segments keeps it so. */
    private static List<Held> logs(IndexSearcher searcher, LeafReaderContext leaf) throws IOException {
        int[] heads = documents(Fields.LOG, searcher, leaf);
        int[] readings = documents(Fields.REP, searcher, leaf);
        StoredFields stored = leaf.reader().storedFields();
        List<Held> logs = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < heads.length; i++) {
            int next = i + 1 < heads.length ? heads[i + 1] : leaf.reader().maxDoc();
            int to = from;
            while (to < readings.length && readings[to] < next) {
                to++;
            }
            IndexedLog log = Packed.log(stored.document(heads[i]).getBinaryValue(Fields.WHOLE));
            logs.add(new Held(log, Fields.key(log.id()), heads[i], Arrays.copyOfRange(readings, from, to)));
            from = to;
        }
        return logs;
    }

    private static List<Listed> prospects(IndexSearcher searcher, LeafReaderContext leaf) throws IOException {
        StoredFields stored = leaf.reader().storedFields();
        List<Listed> prospects = new ArrayList<>();
        for (int document : documents(Fields.PROSPECT, searcher, leaf)) {
            Prospect one = Packed.prospect(stored.document(document).getBinaryValue(Fields.WHOLE));
            prospects.add(new Listed(one, document));
        }
        return prospects;
    }

    private static int[] documents(String kind, IndexSearcher searcher, LeafReaderContext leaf) throws IOException {
        Weight weight = Walk.weight(searcher, new TermQuery(new Term(Fields.KIND, kind)));
        IntStream.Builder found = IntStream.builder();
        Walk.in(leaf, weight, found::add);
        return found.build().toArray();
    }
}
