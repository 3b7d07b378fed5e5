package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.IntUnaryOperator;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.search.IndexSearcher;

/** Counts reps by the values of one facet. */
final class FacetCount {
    /** One value of one group, within one segment of the index. */
    private record Key(int group, long ordinal) {}

    private final List<LeafReaderContext> leaves;
    private final String field;

    FacetCount(IndexSearcher searcher, String facet) {
        this.leaves = searcher.getLeafContexts();
        this.field = Fields.exact(facet);
    }

    /** The values of the reps that {@code reps} hands over, in the order of their documents. */
    SortedMap<String, Count> of(Consumer<Footage.Each> reps) {
        return counted(document -> 0, reps).getOrDefault(0, new TreeMap<>());
    }

    /** The same for each prospect, by his id. */
    SortedMap<String, SortedMap<String, Count>> ofEach(Owners owners, Consumer<Footage.Each> reps) {
        SortedMap<String, SortedMap<String, Count>> byProspect = new TreeMap<>();
        counted(owners::of, reps)
                .forEach((owner, counts) ->
                        byProspect.put(owners.all().get(owner).prospect().id(), counts));
        return byProspect;
    }

    private Map<Integer, SortedMap<String, Count>> counted(IntUnaryOperator groups, Consumer<Footage.Each> reps) {
        List<SortedSetDocValues> values = new ArrayList<>();
        List<Map<Key, int[]>> byLeaf = new ArrayList<>();
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
                        Key key = new Key(groups.applyAsInt(document), its.nextOrd());
                        int[] count = byLeaf.get(leaf).computeIfAbsent(key, k -> new int[2]);
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

    private static Map<Integer, SortedMap<String, Count>> named(
            List<SortedSetDocValues> values, List<Map<Key, int[]>> byLeaf) throws IOException {
        Map<Integer, SortedMap<String, Count>> groups = new HashMap<>();
        for (int leaf = 0; leaf < byLeaf.size(); leaf++) {
            for (Map.Entry<Key, int[]> one : byLeaf.get(leaf).entrySet()) {
                String value =
                        values.get(leaf).lookupOrd(one.getKey().ordinal()).utf8ToString();
                Count more = new Count(one.getValue()[0], one.getValue()[1]);
                groups.computeIfAbsent(one.getKey().group(), group -> new TreeMap<>())
                        .merge(value, more, Count::plus);
            }
        }
        return groups;
    }
}
