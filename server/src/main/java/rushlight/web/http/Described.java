package rushlight.web.http;

import java.io.ByteArrayOutputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFDataMgr;
import org.apache.jena.sparql.graph.GraphFactory;

/** What a graph says of one thing: its own statements, and those of the unnamed nodes they lead to. */
final class Described {
    private Described() {}

    static Graph of(Graph graph, Node thing) {
        Graph said = GraphFactory.createDefaultGraph();
        graph.getPrefixMapping().getNsPrefixMap().forEach(said.getPrefixMapping()::setNsPrefix);
        Set<Node> seen = new HashSet<>();
        Deque<Node> open = new ArrayDeque<>();
        open.add(thing);
        while (!open.isEmpty()) {
            Node at = open.remove();
            if (seen.add(at)) {
                for (Triple t : graph.find(at, Node.ANY, Node.ANY).toList()) {
                    said.add(t);
                    if (t.getObject().isBlank()) {
                        open.add(t.getObject());
                    }
                }
            }
        }
        return said;
    }

    static byte[] written(Graph graph, Lang form) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        RDFDataMgr.write(out, graph, form);
        return out.toByteArray();
    }
}
