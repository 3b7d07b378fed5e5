package rushlight.index;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;

/**
 * A part of the film that a question keeps to, beside what its reps are like: whose, which games, and words of the notes.
 * Where nothing is named, everything is meant.
 *
 * @param prospects ids of prospects
 * @param games ids of games
 * @param opponents other teams, as written
 * @param levels levels of play, as written
 * @param notes words that the note on a rep has, one after the other
 */
public record Slice(
        Set<String> prospects, Set<String> games, Set<String> opponents, Set<String> levels, Optional<String> notes) {
    private static final Query READINGS = new TermQuery(new Term(Fields.KIND, Fields.REP));

    public Slice {
        prospects = Set.copyOf(prospects);
        games = Set.copyOf(games);
        opponents = Set.copyOf(opponents);
        levels = Set.copyOf(levels);
    }

    /** All film. */
    public static Slice everything() {
        return new Slice(Set.of(), Set.of(), Set.of(), Set.of(), Optional.empty());
    }

    /** All film of these prospects. */
    public static Slice of(Collection<String> prospects) {
        return new Slice(Set.copyOf(prospects), Set.of(), Set.of(), Set.of(), Optional.empty());
    }

    /** This part, of these prospects alone. */
    public Slice only(Collection<String> some) {
        return new Slice(Set.copyOf(some), games, opponents, levels, notes);
    }

    /** The readings of this part that the inner query finds. */
    Query with(Query inner) {
        List<Query> parts = new ArrayList<>();
        add(parts, Fields.PROSPECT, prospects);
        add(parts, Fields.GAME, games);
        add(parts, Fields.OPPONENT, opponents);
        add(parts, Fields.LEVEL, levels);
        notes.map(TextQuery::phraseOfANote).ifPresent(parts::add);
        if (parts.isEmpty()) {
            return inner;
        }
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        all.add(READINGS, Occur.FILTER).add(inner, Occur.FILTER);
        parts.forEach(part -> all.add(part, Occur.FILTER));
        return all.build();
    }

    private static void add(List<Query> parts, String field, Set<String> values) {
        if (!values.isEmpty()) {
            parts.add(
                    new TermInSetQuery(field, values.stream().map(BytesRef::new).toList()));
        }
    }
}
