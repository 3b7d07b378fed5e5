package rushlight.index;

import java.io.IOException;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.Bits;

/** Goes through what a query finds, segment by segment, in the order of the documents. */
final class Walk {
    /** What is done with the documents of one segment. */
    interface Segment {
        /** Called for each document found, by its number in the segment. */
        void found(int document) throws IOException;
    }

    /** What is done when a segment begins. */
    interface Begin {
        /** What to do with the segment's documents. */
        Segment segment(LeafReaderContext leaf) throws IOException;
    }

    private Walk() {}

    static void over(IndexSearcher searcher, Query query, Begin begin) throws IOException {
        Weight weight = weight(searcher, query);
        for (LeafReaderContext leaf : searcher.getLeafContexts()) {
            Bits live = leaf.reader().getLiveDocs();
            Segment segment = begin.segment(leaf);
            in(leaf, weight, document -> {
                if (live == null || live.get(document)) {
                    segment.found(document);
                }
            });
        }
    }

    /** Goes through the matches of one segment, deleted documents among them. */
    static void in(LeafReaderContext leaf, Weight weight, Segment segment) throws IOException {
        DocIdSetIterator matches = matches(weight, leaf);
        for (int d = matches.nextDoc(); d != DocIdSetIterator.NO_MORE_DOCS; d = matches.nextDoc()) {
            segment.found(d);
        }
    }

    static Weight weight(IndexSearcher searcher, Query query) throws IOException {
        return searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE_NO_SCORES, 1);
    }

    /** The matches of a segment, deleted documents among them. */
    static DocIdSetIterator matches(Weight weight, LeafReaderContext leaf) throws IOException {
        Scorer scorer = weight.scorer(leaf);
        return scorer == null ? DocIdSetIterator.empty() : scorer.iterator();
    }
}
