package rushlight.index;

import java.util.List;
import org.apache.lucene.document.IntPoint;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import rushlight.situation.Situation;

/** A situation as a query over the readings. */
final class SituationQuery {
    private static final Query READINGS = new TermQuery(new Term(Fields.KIND, Fields.REP));

    /** As many clauses as Lucene takes in one query without being asked. */
    private static final int FEW = 200;

    private SituationQuery() {}

    /** Finds exactly the readings that fit. */
    static Query of(Situation situation) {
        return new ConstantScoreQuery(query(situation));
    }

    private static Query query(Situation situation) {
        if (situation instanceof Situation.Has has) {
            return term(has.facet(), has.value());
        }
        if (situation instanceof Situation.AnyOf any) {
            return anyOf(any);
        }
        if (situation instanceof Situation.Between between) {
            return IntPoint.newRangeQuery(
                    Fields.number(between.facet()),
                    between.least().orElse(Integer.MIN_VALUE),
                    between.most().orElse(Integer.MAX_VALUE));
        }
        if (situation instanceof Situation.And and) {
            return all(and.parts());
        }
        if (situation instanceof Situation.Or or) {
            BooleanQuery.Builder some = new BooleanQuery.Builder();
            or.parts().forEach(part -> some.add(query(part), Occur.SHOULD));
            return some.build();
        }
        return all(List.of(situation));
    }

    /** Lucene has no pure negation: what must not hold is taken from all readings. */
    private static Query all(List<Situation> parts) {
        BooleanQuery.Builder every = new BooleanQuery.Builder();
        boolean onlyNegations = true;
        for (Situation part : parts) {
            if (part instanceof Situation.Not not) {
                every.add(query(not.inner()), Occur.MUST_NOT);
            } else {
                every.add(query(part), Occur.FILTER);
                onlyNegations = false;
            }
        }
        if (onlyNegations) {
            every.add(READINGS, Occur.FILTER);
        }
        return every.build();
    }

    private static Query anyOf(Situation.AnyOf any) {
        if (any.values().size() > FEW) {
            return new TermInSetQuery(
                    Fields.closed(any.facet()),
                    any.values().stream().map(BytesRef::new).toList());
        }
        BooleanQuery.Builder some = new BooleanQuery.Builder();
        any.values().forEach(value -> some.add(term(any.facet(), value), Occur.SHOULD));
        return some.build();
    }

    private static Query term(String facet, String value) {
        return new TermQuery(new Term(Fields.closed(facet), value));
    }
}
