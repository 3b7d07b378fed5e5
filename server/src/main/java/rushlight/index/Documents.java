package rushlight.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.IntPoint;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.SortedSetDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.util.BytesRef;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.situation.Facet;
import rushlight.situation.Facets;
import rushlight.situation.LogFacts;
import rushlight.situation.Sighting;
import rushlight.words.LabelKey;

/** What stands in the index for a log, for each of its readings, for a prospect and for a page of the book. */
final class Documents {
    private final Facets counted;

    /** Facets that no situation can ask about, such as free text, are kept and not indexed. */
    Documents(Facets counted) {
        this.counted = counted;
    }

    List<Document> of(LogFacts facts) throws IOException {
        Log log = facts.log();
        IndexedLog head = new IndexedLog(log.evaluator(), log.prospect(), log.game());
        String key = Fields.key(head.id());
        List<Document> documents = new ArrayList<>();
        documents.add(head(head, key));
        for (int i = 0; i < log.readings().size(); i++) {
            documents.add(rep(log, key, i, facts.facts().get(i)));
        }
        return documents;
    }

    static Document of(Prospect prospect) throws IOException {
        Document document = document(Fields.PROSPECT, prospect.id());
        addNames(document, List.of(prospect.name(), prospect.id()));
        about(document, String.join(" ", prospect.position(), prospect.team(), prospect.classYear(), prospect.notes()));
        document.add(new StoredField(Fields.WHOLE, Packed.prospect(prospect)));
        return document;
    }

    static Document of(Page page) throws IOException {
        Document document = new Document();
        document.add(keyword(Fields.KIND, Fields.PAGE));
        addNames(document, page.names());
        about(document, page.about());
        document.add(new StoredField(Fields.WHOLE, Packed.page(page)));
        return document;
    }

    private static void addNames(Document document, List<String> names) {
        names.stream().map(LabelKey::of).distinct().forEach(key -> document.add(keyword(Fields.NAME, key)));
        names.forEach(name -> document.add(new TextField(Fields.NAMES, name, Field.Store.NO)));
    }

    private static void about(Document document, String text) {
        document.add(new TextField(Fields.ABOUT, text, Field.Store.NO));
    }

    private static Document head(IndexedLog log, String key) throws IOException {
        Document document = document(Fields.LOG, log.prospect().id());
        document.add(keyword(Fields.LOG, key));
        document.add(new StoredField(Fields.WHOLE, Packed.log(log)));
        return document;
    }

    private Document rep(Log log, String key, int place, RepFacts facts) throws IOException {
        Reading reading = log.readings().get(place);
        Document document = document(Fields.REP, log.prospect().id());
        document.add(new SortedDocValuesField(
                Fields.BY_PROSPECT, new BytesRef(log.prospect().id())));
        document.add(keyword(Fields.LOG, key));
        document.add(new SortedDocValuesField(Fields.BY_LOG, new BytesRef(key)));
        document.add(new NumericDocValuesField(Fields.PLACE, place));
        document.add(keyword(Fields.GAME, log.game().id()));
        document.add(keyword(Fields.OPPONENT, log.game().opponent()));
        document.add(keyword(Fields.LEVEL, log.game().level()));
        reading.one("note").ifPresent(note -> document.add(new TextField(Fields.NOTE, note, Field.Store.NO)));
        for (Facet facet : counted.all()) {
            String name = facet.name();
            facts.closed().getOrDefault(name, Set.of()).forEach(v -> document.add(keyword(Fields.closed(name), v)));
            facts.tagged(name).forEach(value -> document.add(exact(name, value)));
            facts.number(name).ifPresent(number -> {
                document.add(new IntPoint(Fields.number(name), number));
                document.add(exact(name, Integer.toString(number)));
            });
        }
        Sighting sighting = Sighting.of(reading, log.game().name());
        document.add(new BinaryDocValuesField(Fields.SIGHTING, Packed.sighting(sighting)));
        document.add(new StoredField(Fields.WHOLE, Packed.rep(reading, facts)));
        return document;
    }

    private static Document document(String kind, String prospect) {
        Document document = new Document();
        document.add(keyword(Fields.KIND, kind));
        document.add(keyword(Fields.PROSPECT, prospect));
        return document;
    }

    private static Field keyword(String name, String value) {
        return new StringField(name, value, Field.Store.NO);
    }

    private static Field exact(String facet, String value) {
        return new SortedSetDocValuesField(Fields.exact(facet), new BytesRef(value));
    }
}
