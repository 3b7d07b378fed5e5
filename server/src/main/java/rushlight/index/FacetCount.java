package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.search.IndexSearcher;

/** Counts reps by the values of one facet. */
final class FacetCount {
    private final List<LeafReaderContext> leaves;
    private final String field;

    FacetCount(IndexSearcher searcher, String facet) {
        this.leaves = searcher.getLeafContexts();
        this.field = Fields.exact(facet);
    }

    /** The values of the reps that {@code reps} hands over, in the order of their documents. */
    SortedMap<String, Count> of(Consumer<Footage.Each> reps) {
        List<SortedSetDocValues> values = new ArrayList<>();
        List<Map<Long, int[]>> byLeaf = new ArrayList<>();
        try {
            for (LeafReaderContext leaf : leaves) {
                values.add(DocValues.getSortedSet(leaf.reader(), field));
                byLeaf.add(new HashMap<>());
            }
            reps.accept((document, happened) -> {
                int leaf = ReaderUtil.subIndex(document, leaves);
                SortedSetDocValues its = values.get(leaf);
                if (its.advanceExact(document - leaves.get(leaf).docBase)) {
                    for (int i = 0; i < its.docValueCount(); i++) {
                        int[] count = byLeaf.get(leaf).computeIfAbsent(its.nextOrd(), ordinal -> new int[2]);
                        count[0]++;
                        count[1] += happened ? 1 : 0;
                    }
                }
            });
            return named(values, byLeaf);
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }

    private static SortedMap<String, Count> named(List<SortedSetDocValues> values, List<Map<Long, int[]>> byLeaf)
            throws IOException {
        SortedMap<String, Count> counts = new TreeMap<>();
        for (int leaf = 0; leaf < byLeaf.size(); leaf++) {
            for (Map.Entry<Long, int[]> one : byLeaf.get(leaf).entrySet()) {
                String value = values.get(leaf).lookupOrd(one.getKey()).utf8ToString();
                Count more = new Count(one.getValue()[0], one.getValue()[1]);
                counts.merge(value, more, Count::plus);
            }
        }
        return counts;
    }
}
