package rushlight.index;

import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.MatchNoDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.QueryBuilder;
import org.jspecify.annotations.Nullable;
import rushlight.words.LabelKey;

/** Text that a person typed as a query. Any text is one; nothing in it is a command. */
final class TextQuery {
    /** Fewer words than the clauses that one query may have. */
    private static final int LONGEST = 1_000;

    private static final int SAME_NAME = 100;
    private static final int IN_THE_NAME = 4;

    private TextQuery() {}

    /** Notes that have these words one after the other, whatever their endings. */
    static Query phraseOfANote(String text) {
        return orNothing(words().createPhraseQuery(Fields.NOTE, cut(text)));
    }

    /** Notes that have some of these words. */
    static Query wordsOfANote(String text) {
        return orNothing(words().createBooleanQuery(Fields.NOTE, cut(text), Occur.SHOULD));
    }

    /** Pages and prospects with such a name, or with some of these words in it or in what is told of them. */
    static Query named(String text) {
        BooleanQuery.Builder some = new BooleanQuery.Builder();
        Query same = new ConstantScoreQuery(new TermQuery(new Term(Fields.NAME, LabelKey.of(cut(text)))));
        some.add(new BoostQuery(same, SAME_NAME), Occur.SHOULD);
        Query inName = orNothing(words().createBooleanQuery(Fields.NAMES, cut(text), Occur.SHOULD));
        some.add(new BoostQuery(inName, IN_THE_NAME), Occur.SHOULD);
        some.add(orNothing(words().createBooleanQuery(Fields.ABOUT, cut(text), Occur.SHOULD)), Occur.SHOULD);
        return some.build();
    }

    private static QueryBuilder words() {
        return new QueryBuilder(Prose.read());
    }

    private static Query orNothing(@Nullable Query query) {
        return query == null ? new MatchNoDocsQuery("there is no word in it") : query;
    }

    private static String cut(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    }
}
