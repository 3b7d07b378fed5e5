package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import rushlight.film.Prospect;

/** Looks words up in names, definitions and notes. Any text can be looked up. Good until the question is answered. */
public final class Texts {
    private final IndexSearcher searcher;
    private final Owners owners;
    private final Marker marker = new Marker();

    Texts(IndexSearcher searcher, Owners owners) {
        this.searcher = searcher;
        this.owners = owners;
    }

    /**
     * A page of the book that was found.
     *
     * @param page what it is
     * @param score how well it fits: what goes by exactly this name stands before everything else
     * @param about what is told of it, with the words that were looked up
     */
    public record PageHit(Page page, double score, Marked about) {}

    /**
     * A prospect that was found by his name or what is told of him.
     *
     * @param prospect who
     * @param score how well he fits
     */
    public record ProspectHit(Prospect prospect, double score) {}

    /**
     * A rep that was found by its note.
     *
     * @param rep which, its note marked
     * @param score how well the note fits
     */
    public record NoteHit(FoundRep rep, double score) {}

    /** The pages that go by this name, then those that have some of its words. */
    public List<PageHit> pages(String text, int most) {
        Query named = TextQuery.named(text);
        List<PageHit> hits = new ArrayList<>();
        for (ScoreDoc found : found(Fields.PAGE, named, most)) {
            try {
                Page page = Packed.page(whole(searcher, found.doc));
                hits.add(new PageHit(page, found.score, marker.mark(Fields.ABOUT, named, page.about())));
            } catch (IOException e) {
                throw RepIndex.unreadable(e);
            }
        }
        return hits;
    }

    /** The prospects of this name, then those of whom some of its words are told. */
    public List<ProspectHit> prospects(String text, int most) {
        List<ProspectHit> hits = new ArrayList<>();
        for (ScoreDoc found : found(Fields.PROSPECT, TextQuery.named(text), most)) {
            try {
                hits.add(new ProspectHit(Packed.prospect(whole(searcher, found.doc)), found.score));
            } catch (IOException e) {
                throw RepIndex.unreadable(e);
            }
        }
        return hits;
    }

    /** The reps whose note has some of these words, those that fit best first. */
    public List<NoteHit> notes(String text, int most) {
        Query words = TextQuery.wordsOfANote(text);
        List<NoteHit> hits = new ArrayList<>();
        for (ScoreDoc found : found(Fields.REP, words, most)) {
            if (owners.of(found.doc) >= 0) {
                hits.add(new NoteHit(FoundReps.rep(searcher, owners, words, owners.key(found.doc), true), found.score));
            }
        }
        return hits;
    }

    static String note(IndexSearcher searcher, int document) throws IOException {
        return Packed.rep(whole(searcher, document)).reading().one("note").orElse("");
    }

    private static BytesRef whole(IndexSearcher searcher, int document) throws IOException {
        return searcher.storedFields().document(document).getBinaryValue(Fields.WHOLE);
    }

    private ScoreDoc[] found(String kind, Query words, int most) {
        Query query = new BooleanQuery.Builder()
                .add(new TermQuery(new Term(Fields.KIND, kind)), Occur.FILTER)
                .add(words, Occur.MUST)
                .build();
        try {
            return searcher.search(query, Math.max(1, most)).scoreDocs;
        } catch (IOException e) {
            throw RepIndex.unreadable(e);
        }
    }
}
