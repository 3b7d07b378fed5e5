package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.BytesRef;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.situation.ReadingChoice;
import rushlight.situation.Tapes;

/** Finds the documents of a prospect's reps: game by game, the reading that counts, in the order they were played. */
final class Shelf {
    /** One log's head, and its readings' document numbers in their order. */
    private record Watched(IndexedLog log, List<Integer> documents) {}

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
    private final Segments segments;
    private final ReadingChoice choice;

    Shelf(IndexSearcher searcher, Segments segments, List<String> evaluators) {
        this.searcher = searcher;
        this.segments = segments;
        this.choice = new ReadingChoice(evaluators);
    }

    /** Everybody of whom there is a log, in order of their ids. */
    List<Played> everybody() throws IOException {
        Map<String, Prospect> known = new HashMap<>();
        Map<String, Watched> watched = new TreeMap<>();
        for (LeafReaderContext leaf : searcher.getLeafContexts()) {
            Bits live = leaf.reader().getLiveDocs();
            Segments.Film film = segments.film(searcher, leaf);
            for (Segments.Listed one : film.prospects()) {
                if (live == null || live.get(one.document())) {
                    known.put(one.prospect().id(), one.prospect());
                }
            }
            for (Segments.Held log : film.logs()) {
                if (live == null || live.get(log.head())) {
                    List<Integer> documents = new ArrayList<>(log.readings().length);
                    for (int reading : log.readings()) {
                        documents.add(leaf.docBase + reading);
                    }
                    watched.put(log.key(), new Watched(log.log(), documents));
                }
            }
        }
        return played(known, watched.values());
    }

    /** The same of one prospect, found without looking at anybody else's film. */
    Optional<Played> one(String prospect) throws IOException {
        Query his = new TermQuery(new Term(Fields.PROSPECT, prospect));
        Map<String, Prospect> known = new HashMap<>();
        for (int document : found(Fields.PROSPECT, his)) {
            known.put(prospect, Packed.prospect(whole(document)));
        }
        return played(known, watched(his)).stream().findFirst();
    }

    private List<Played> played(Map<String, Prospect> known, Collection<Watched> all) throws IOException {
        Map<String, List<Watched>> byProspect = new TreeMap<>();
        for (Watched watched : all) {
            byProspect
                    .computeIfAbsent(watched.log().prospect().id(), id -> new ArrayList<>())
                    .add(watched);
        }
        List<Played> played = new ArrayList<>();
        for (Map.Entry<String, List<Watched>> his : byProspect.entrySet()) {
            Prospect asLogged = his.getValue().get(0).log().prospect();
            played.add(new Played(known.getOrDefault(his.getKey(), asLogged), games(his.getValue())));
        }
        return played;
    }

    /** The stored bytes of a document. */
    BytesRef whole(int document) throws IOException {
        return searcher.storedFields().document(document).getBinaryValue(Fields.WHOLE);
    }

    private Collection<Watched> watched(Query whose) throws IOException {
        Map<String, IndexedLog> logs = new TreeMap<>();
        for (int document : found(Fields.LOG, whose)) {
            IndexedLog log = Packed.log(whole(document));
            logs.put(Fields.key(log.id()), log);
        }
        Map<String, SortedMap<Integer, Integer>> byPlace = new HashMap<>();
        Walk.over(searcher, of(Fields.REP, whose), leaf -> placing(leaf, byPlace));
        List<Watched> watched = new ArrayList<>();
        logs.forEach((key, log) -> watched.add(new Watched(
                log, List.copyOf(byPlace.getOrDefault(key, new TreeMap<>()).values()))));
        return watched;
    }

    private static Walk.Segment placing(LeafReaderContext leaf, Map<String, SortedMap<Integer, Integer>> byPlace)
            throws IOException {
        SortedDocValues logs = DocValues.getSorted(leaf.reader(), Fields.BY_LOG);
        NumericDocValues places = DocValues.getNumeric(leaf.reader(), Fields.PLACE);
        return document -> {
            logs.advanceExact(document);
            places.advanceExact(document);
            byPlace.computeIfAbsent(logs.lookupOrd(logs.ordValue()).utf8ToString(), key -> new TreeMap<>())
                    .put((int) places.longValue(), leaf.docBase + document);
        };
    }

    private List<PlayedGame> games(List<Watched> logs) throws IOException {
        Map<Game, List<Watched>> byGame = new TreeMap<>(Tapes.ORDER_OF_PLAY);
        logs.forEach(watched -> byGame.computeIfAbsent(watched.log().game(), g -> new ArrayList<>())
                .add(watched));
        List<PlayedGame> games = new ArrayList<>();
        for (Map.Entry<Game, List<Watched>> game : byGame.entrySet()) {
            List<Integer> documents = new ArrayList<>();
            game.getValue().forEach(w -> documents.addAll(w.documents()));
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
