package rushlight.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.vocabulary.RDF;
import org.apache.jena.vocabulary.RDFS;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Reading;
import rushlight.knowledge.FilmColumns;

/**
 * What changes took away, kept in a graph of its own: a reading or the head of a log as it was stands there under its
 * address with {@code /was/} and the number of the change behind it.
 */
final class History {
    private static final Node TYPE = RDF.type.asNode();

    private final Graph film;
    private final Graph kept;
    private final FilmColumns columns;

    History(DatasetGraph data, FilmColumns columns) {
        this.film = data.getDefaultGraph();
        this.kept = data.getGraph(Addresses.HISTORY);
        this.columns = columns;
    }

    /** Tells of a change. */
    static void tell(DatasetGraph data, long revision, Change.Note note) {
        Graph kept = data.getGraph(Addresses.HISTORY);
        Node change = Addresses.revision(revision);
        kept.add(
                Triple.create(change, Terms.CHANGE_KIND, Literals.of(note.kind().slug())));
        kept.add(Triple.create(change, RDFS.comment.asNode(), Literals.of(note.said())));
        if (!note.by().isEmpty()) {
            kept.add(Triple.create(change, Terms.CHANGED_BY, Literals.of(note.by())));
        }
        note.undoes().ifPresent(other -> kept.add(Triple.create(change, Terms.UNDOES, Addresses.revision(other))));
    }

    /** Keeps what a log was before it becomes something else, or nothing. */
    void keep(long revision, LogId id, Optional<Log> before, Optional<Log> after, LogGraph writer) {
        Node change = Addresses.revision(revision);
        Node log = Addresses.log(id);
        if (before.isEmpty()) {
            add(change, Terms.MADE, log);
            return;
        }
        if (after.isEmpty() || !isSameHead(before.get(), after.get())) {
            Node was = was(log, revision);
            add(was, Terms.VERSION_OF, log);
            add(was, Terms.ENDED_BY, change);
            writer.writeHead(before.get(), id, was, kept::add);
        }
        Map<String, Reading> old = byRep(before.get());
        Map<String, Reading> now = after.map(History::byRep).orElse(Map.of());
        int order = 0;
        for (Reading reading : before.get().readings()) {
            if (!reading.equals(now.get(reading.rep().rep()))) {
                Node node = Addresses.reading(reading.rep(), id.evaluator());
                Node was = was(node, revision);
                add(was, Terms.VERSION_OF, node);
                add(was, Terms.ENDED_BY, change);
                writer.writeReading(reading, was, log, order, Set.of(), kept::add);
            }
            order++;
        }
        now.forEach((rep, reading) -> {
            if (!reading.equals(old.get(rep))) {
                add(change, Terms.MADE, Addresses.reading(reading.rep(), id.evaluator()));
            }
        });
    }

    /** The numbers of all changes, the newest first. */
    List<Long> revisions() {
        return kept
                .find(Node.ANY, Terms.REVISION, Node.ANY)
                .mapWith(t -> Long.parseLong(t.getObject().getLiteralLexicalForm()))
                .toList()
                .stream()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** One change; empty where there was none of that number. */
    Optional<PastChange> change(long revision) {
        Node change = Addresses.revision(revision);
        Optional<Node> when = object(change, Terms.GENERATED);
        if (when.isEmpty()) {
            return Optional.empty();
        }
        LogReader reader = new LogReader(kept, columns);
        List<PastChange.Before> before = new ArrayList<>();
        List<Log> heads = new ArrayList<>();
        for (Triple t : kept.find(Node.ANY, Terms.ENDED_BY, change).toList()) {
            Node was = t.getSubject();
            if (kept.contains(was, TYPE, Terms.READING_CLASS)) {
                LogId id = StoredRevision.logId(object(was, Terms.LOG).orElseThrow());
                String evaluator = new LogReader(film, columns).name(Addresses.person(id.evaluator()));
                before.add(new PastChange.Before(id, reader.order(was), reader.reading(was, id, evaluator)));
            } else {
                LogId id = StoredRevision.logId(object(was, Terms.VERSION_OF).orElseThrow());
                heads.add(new LogReader(film, columns).head(id, kept, was));
            }
        }
        Set<PastChange.After> after = new HashSet<>();
        Set<LogId> fresh = new HashSet<>();
        for (Triple t : kept.find(change, Terms.MADE, Node.ANY).toList()) {
            if (Addresses.isLog(t.getObject())) {
                fresh.add(StoredRevision.logId(t.getObject()));
            } else {
                after.add(Addresses.after(t.getObject()));
            }
        }
        Set<LogId> changed = new HashSet<>();
        kept.find(change, Terms.CHANGED, Node.ANY)
                .forEachRemaining(t -> changed.add(StoredRevision.logId(t.getObject())));
        before.sort(Comparator.comparing((PastChange.Before b) -> b.log().toString())
                .thenComparing(PastChange.Before::order));
        return Optional.of(new PastChange(
                revision,
                Instant.parse(when.get().getLiteralLexicalForm()),
                words(change, Terms.CHANGE_KIND),
                words(change, RDFS.comment.asNode()),
                words(change, Terms.CHANGED_BY),
                undoes(change),
                changed,
                before,
                after,
                fresh,
                heads));
    }

    private OptionalLong undoes(Node change) {
        return object(change, Terms.UNDOES)
                .map(node -> OptionalLong.of(Long.parseLong(Addresses.last(node))))
                .orElseGet(OptionalLong::empty);
    }

    private String words(Node subject, Node property) {
        return object(subject, property).map(Node::getLiteralLexicalForm).orElse("");
    }

    private Optional<Node> object(Node subject, Node property) {
        return kept.find(subject, property, Node.ANY).mapWith(Triple::getObject).toList().stream()
                .findFirst();
    }

    private void add(Node subject, Node property, Node object) {
        kept.add(Triple.create(subject, property, object));
    }

    private static boolean isSameHead(Log one, Log other) {
        return one.charted().equals(other.charted()) && one.source().equals(other.source());
    }

    private static Map<String, Reading> byRep(Log log) {
        Map<String, Reading> readings = new HashMap<>();
        log.readings().forEach(reading -> readings.put(reading.rep().rep(), reading));
        return readings;
    }

    private static Node was(Node node, long revision) {
        return NodeFactory.createURI(node.getURI() + "/was/" + revision);
    }
}
