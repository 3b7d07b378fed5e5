package rushlight.index;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntPredicate;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.FixedBitSet;
import rushlight.situation.Situation;

/** Which documents meet one condition. */
interface Conditions {
    /** A test to be asked with ever greater document numbers. */
    IntPredicate of(Situation condition);

    /** For one prospect: jumps from document to document and touches nobody else's. */
    static Conditions jumping(IndexSearcher searcher) {
        return condition -> {
            try {
                return new Jumping(searcher, condition);
            } catch (IOException e) {
                throw RepIndex.unreadable(e);
            }
        };
    }

    /** For all prospects: looks each condition up over the whole index, and remembers. */
    static Conditions remembering(IndexSearcher searcher, Segments segments) {
        List<LeafReaderContext> leaves = searcher.getLeafContexts();
        Map<Situation, FixedBitSet[]> remembered = new ConcurrentHashMap<>();
        return condition ->
                new Found(leaves, remembered.computeIfAbsent(condition, c -> everywhere(searcher, segments, c)));
    }

    private static FixedBitSet[] everywhere(IndexSearcher searcher, Segments segments, Situation condition) {
        try {
            return segments.matching(searcher, condition);
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }

    /** Reads what was found in one segment of the index after another. */
    final class Found implements IntPredicate {
        private final List<LeafReaderContext> leaves;
        private final FixedBitSet[] found;
        private FixedBitSet here = new FixedBitSet(0);
        private int begin;
        private int end;

        Found(List<LeafReaderContext> leaves, FixedBitSet... found) {
            this.leaves = leaves;
            this.found = found;
        }

        @Override
        public boolean test(int document) {
            if (document < begin || document >= end) {
                int of = ReaderUtil.subIndex(document, leaves);
                begin = leaves.get(of).docBase;
                end = begin + leaves.get(of).reader().maxDoc();
                here = found[of];
            }
            return here.get(document - begin);
        }
    }

    /** Walks along the matches of a condition, one segment of the index after another. */
    final class Jumping implements IntPredicate {
        private final Weight weight;
        private final List<LeafReaderContext> leaves;
        private int leaf = -1;
        private DocIdSetIterator matches = DocIdSetIterator.empty();

        Jumping(IndexSearcher searcher, Situation condition) throws IOException {
            this.weight = Walk.weight(searcher, SituationQuery.of(condition));
            this.leaves = searcher.getLeafContexts();
        }

        @Override
        public boolean test(int document) {
            try {
                int of = ReaderUtil.subIndex(document, leaves);
                if (of != leaf) {
                    leaf = of;
                    matches = Walk.matches(weight, leaves.get(of));
                }
                int local = document - leaves.get(of).docBase;
                if (matches.docID() < local) {
                    matches.advance(local);
                }
                return matches.docID() == local;
            } catch (IOException e) {
                throw RepIndex.unreadable(e);
            }
        }
    }
}
