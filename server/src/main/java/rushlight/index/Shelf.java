package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.situation.ReadingChoice;
import rushlight.situation.Tapes;

/** Finds the documents of a prospect's reps: game by game, the reading that counts, in the order they were played. */
final class Shelf {
    /** One log's head, and its readings' document numbers by their place in the log. */
    private record Watched(IndexedLog log, SortedMap<Integer, Integer> documents) {}

    /**
     * The documents of one game.
     *
     * @param game which game
     * @param documents those that count, in order
     * @param twice the reps that two evaluators have read, as pairs of documents
     */
    record PlayedGame(Game game, List<Integer> documents, List<ReadingChoice.Two> twice) {}

    /**
     * The documents of one prospect.
     *
     * @param prospect who
     * @param games in the order they were played
     */
    record Played(Prospect prospect, List<PlayedGame> games) {}

    private final IndexSearcher searcher;
    private final ReadingChoice choice;

    Shelf(IndexSearcher searcher, List<String> evaluators) {
        this.searcher = searcher;
        this.choice = new ReadingChoice(evaluators);
    }

    /** Everything of this prospect's. */
    static Query of(String prospect) {
        return new TermQuery(new Term(Fields.PROSPECT, prospect));
    }

    /** Those whom the query finds and of whom there is a log, in order of their ids. */
    List<Played> played(Query whose) throws IOException {
        Map<String, Prospect> known = new HashMap<>();
        for (int document : found(Fields.PROSPECT, whose)) {
            Prospect prospect = Packed.prospect(whole(document));
            known.put(prospect.id(), prospect);
        }
        Map<String, List<Watched>> byProspect = new TreeMap<>();
        for (Watched watched : watched(whose).values()) {
            byProspect
                    .computeIfAbsent(watched.log().prospect().id(), id -> new ArrayList<>())
                    .add(watched);
        }
        List<Played> all = new ArrayList<>();
        for (Map.Entry<String, List<Watched>> his : byProspect.entrySet()) {
            Prospect asLogged = his.getValue().get(0).log().prospect();
            all.add(new Played(known.getOrDefault(his.getKey(), asLogged), games(his.getValue())));
        }
        return all;
    }

    /** The stored bytes of a document. */
    BytesRef whole(int document) throws IOException {
        return searcher.storedFields().document(document).getBinaryValue(Fields.WHOLE);
    }

    private Map<String, Watched> watched(Query whose) throws IOException {
        Map<String, Watched> byKey = new TreeMap<>();
        for (int document : found(Fields.LOG, whose)) {
            IndexedLog log = Packed.log(whole(document));
            byKey.put(Fields.key(log.id()), new Watched(log, new TreeMap<>()));
        }
        Walk.over(searcher, of(Fields.REP, whose), leaf -> placing(leaf, byKey));
        return byKey;
    }

    private static Walk.Segment placing(LeafReaderContext leaf, Map<String, Watched> byKey) throws IOException {
        SortedDocValues logs = DocValues.getSorted(leaf.reader(), Fields.BY_LOG);
        NumericDocValues places = DocValues.getNumeric(leaf.reader(), Fields.PLACE);
        Watched[] byOrdinal = new Watched[logs.getValueCount()];
        return document -> {
            logs.advanceExact(document);
            places.advanceExact(document);
            int log = logs.ordValue();
            if (byOrdinal[log] == null) {
                byOrdinal[log] = byKey.get(logs.lookupOrd(log).utf8ToString());
            }
            byOrdinal[log].documents().put((int) places.longValue(), leaf.docBase + document);
        };
    }

    private List<PlayedGame> games(List<Watched> logs) throws IOException {
        Map<Game, List<Watched>> byGame = new TreeMap<>(Tapes.ORDER_OF_PLAY);
        logs.forEach(watched -> byGame.computeIfAbsent(watched.log().game(), g -> new ArrayList<>())
                .add(watched));
        List<PlayedGame> games = new ArrayList<>();
        for (Map.Entry<Game, List<Watched>> game : byGame.entrySet()) {
            List<Integer> documents = new ArrayList<>();
            game.getValue().forEach(w -> documents.addAll(w.documents().values()));
            games.add(
                    game.getValue().size() == 1
                            ? new PlayedGame(game.getKey(), documents, List.of())
                            : chosen(game.getKey(), documents));
        }
        return games;
    }

    private PlayedGame chosen(Game game, List<Integer> documents) throws IOException {
        List<Reading> readings = new ArrayList<>();
        for (int document : documents) {
            readings.add(Packed.rep(whole(document)).reading());
        }
        return new PlayedGame(
                game,
                choice.of(readings).stream().map(documents::get).toList(),
                choice.twice(readings).stream()
                        .map(two -> new ReadingChoice.Two(documents.get(two.first()), documents.get(two.second())))
                        .toList());
    }

    private List<Integer> found(String kind, Query whose) throws IOException {
        List<Integer> documents = new ArrayList<>();
        Walk.over(searcher, of(kind, whose), leaf -> document -> documents.add(leaf.docBase + document));
        return documents;
    }

    private static Query of(String kind, Query whose) {
        return new BooleanQuery.Builder()
                .add(new TermQuery(new Term(Fields.KIND, kind)), Occur.FILTER)
                .add(whose, Occur.FILTER)
                .build();
    }
}
