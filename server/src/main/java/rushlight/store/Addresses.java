package rushlight.store;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import rushlight.film.LogId;
import rushlight.film.RepId;

/** The addresses of stored things. */
final class Addresses {
    static final String DATA = "https://rushlight.example/data/";
    static final Node ARCHIVE = NodeFactory.createURI(DATA + "archive");
    static final Node HISTORY = NodeFactory.createURI(DATA + "history");

    private Addresses() {}

    static Node prospect(String id) {
        return node("prospect", id);
    }

    static Node game(String id) {
        return node("game", id);
    }

    static Node person(String slug) {
        return node("person", slug);
    }

    static Node file(String sha256) {
        return node("file", sha256);
    }

    static Node revision(long number) {
        return node("revision", Long.toString(number));
    }

    static Node log(LogId id) {
        return node("log", id.evaluator(), id.prospect(), id.game());
    }

    static Node reading(RepId rep, String evaluator) {
        return NodeFactory.createURI(
                node("rep", rep.prospect(), rep.game(), rep.rep()).getURI() + "/by/" + escape(evaluator));
    }

    static Node step(Node reading, int number) {
        return NodeFactory.createURI(reading.getURI() + "/step/" + number);
    }

    static boolean isLog(Node node) {
        return node.getURI().startsWith(DATA + "log/");
    }

    /** The reading that stands at an address. */
    static PastChange.After after(Node reading) {
        String[] parts = reading.getURI().substring((DATA + "rep/").length()).split("/", -1);
        return new PastChange.After(
                new LogId(unescape(parts[4]), unescape(parts[0]), unescape(parts[1])), unescape(parts[2]));
    }

    static String last(Node node) {
        String iri = node.getURI();
        return unescape(iri.substring(iri.lastIndexOf('/') + 1));
    }

    private static String unescape(String part) {
        return URLDecoder.decode(part, StandardCharsets.UTF_8);
    }

    static Node node(String kind, String... parts) {
        StringBuilder iri = new StringBuilder(DATA).append(kind);
        for (String part : parts) {
            iri.append('/').append(escape(part));
        }
        return NodeFactory.createURI(iri.toString());
    }

    private static String escape(String part) {
        return URLEncoder.encode(part, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
