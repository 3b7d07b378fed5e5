package rushlight.store;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.Quad;
import rushlight.film.LogId;

/** The number of the last change, and which logs each change touched. */
final class StoredRevision {
    private StoredRevision() {}

    static long current(DatasetGraph data) {
        Iterator<Quad> found = data.find(Quad.defaultGraphIRI, Addresses.ARCHIVE, Terms.REVISION, Node.ANY);
        return found.hasNext() ? number(found.next().getObject()) : 0;
    }

    static long raise(DatasetGraph data, Set<LogId> touched, Instant when) {
        long next = current(data) + 1;
        Graph film = data.getDefaultGraph();
        film.remove(Addresses.ARCHIVE, Terms.REVISION, Node.ANY);
        film.add(Triple.create(Addresses.ARCHIVE, Terms.REVISION, Literals.of(next)));
        Graph history = data.getGraph(Addresses.HISTORY);
        Node revision = Addresses.revision(next);
        history.add(Triple.create(revision, Terms.REVISION, Literals.of(next)));
        history.add(Triple.create(revision, Terms.GENERATED, Literals.of(when)));
        touched.forEach(id -> history.add(Triple.create(revision, Terms.CHANGED, Addresses.log(id))));
        return next;
    }

    static Set<LogId> changedSince(DatasetGraph data, long revision) {
        Set<LogId> changed = new HashSet<>();
        Iterator<Quad> all = data.find(Addresses.HISTORY, Node.ANY, Terms.CHANGED, Node.ANY);
        while (all.hasNext()) {
            Quad quad = all.next();
            if (Long.parseLong(Addresses.last(quad.getSubject())) > revision) {
                changed.add(logId(quad.getObject()));
            }
        }
        return changed;
    }

    /** Who has logs, by slug, in the order of the changes that first touched one of theirs; of one change, by slug. */
    static List<String> evaluators(DatasetGraph data) {
        Map<String, Long> first = new TreeMap<>();
        data.find(Addresses.HISTORY, Node.ANY, Terms.CHANGED, Node.ANY)
                .forEachRemaining(quad -> first.merge(
                        logId(quad.getObject()).evaluator(),
                        Long.parseLong(Addresses.last(quad.getSubject())),
                        Math::min));
        return first.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    static LogId logId(Node log) {
        String[] parts =
                log.getURI().substring((Addresses.DATA + "log/").length()).split("/", -1);
        return new LogId(decode(parts[0]), decode(parts[1]), decode(parts[2]));
    }

    private static String decode(String part) {
        return URLDecoder.decode(part, StandardCharsets.UTF_8);
    }

    private static long number(Node literal) {
        return Long.parseLong(literal.getLiteralLexicalForm());
    }
}
