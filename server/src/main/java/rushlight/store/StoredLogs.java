package rushlight.store;

import java.util.ArrayList;
import java.util.List;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import rushlight.film.LogId;

/** Which logs a graph holds, and how one is taken out with everything that hangs on it. */
final class StoredLogs {
    private StoredLogs() {}

    static List<LogId> ids(Graph film) {
        return film.find(Node.ANY, Terms.DERIVED, Node.ANY).mapWith(Triple::getSubject).toList().stream()
                .map(StoredRevision::logId)
                .sorted((a, b) -> a.toString().compareTo(b.toString()))
                .toList();
    }

    static void remove(Graph film, LogId id) {
        triples(film, id).forEach(film::delete);
    }

    /** Everything that hangs on a log and on nothing else. */
    static List<Triple> triples(Graph film, LogId id) {
        Node log = Addresses.log(id);
        List<Node> readings =
                film.find(Node.ANY, Terms.LOG, log).mapWith(Triple::getSubject).toList();
        List<Triple> its = new ArrayList<>(film.find(log, Node.ANY, Node.ANY).toList());
        for (Node reading : readings) {
            for (Triple t : film.find(reading, Node.ANY, Node.ANY).toList()) {
                its.add(t);
                if (t.getPredicate().equals(Terms.HIS_STEP) || t.getPredicate().equals(Terms.BLOCKER_STEP)) {
                    its.addAll(film.find(t.getObject(), Node.ANY, Node.ANY).toList());
                }
            }
        }
        return its;
    }

    /** The logs that another book than this one classified. */
    static List<LogId> classifiedOtherwise(Graph film, String rules) {
        return ids(film).stream()
                .filter(id -> !film.contains(Addresses.log(id), Terms.RULES_REVISION, Literals.of(rules)))
                .toList();
    }
}
