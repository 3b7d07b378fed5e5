package rushlight.knowledge;

import java.util.Set;
import java.util.stream.Collectors;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.sparql.graph.GraphFactory;

/** How a user's own statements join the shipped ones: a settable value replaces, everything else adds. */
final class Overlay {
    private static final Node SETTABLE = Rl.term("settable");
    private static final Node YES = NodeFactory.createLiteralString("yes");

    private Overlay() {}

    static Graph merge(Graph shipped, Graph overlay) {
        if (overlay.isEmpty()) {
            return shipped;
        }
        Set<Node> settable = shipped.find(Node.ANY, SETTABLE, YES).mapWith(Triple::getSubject).toList().stream()
                .collect(Collectors.toUnmodifiableSet());
        Graph all = GraphFactory.createDefaultGraph();
        shipped.find().forEachRemaining(t -> {
            boolean replaced =
                    settable.contains(t.getPredicate()) && overlay.contains(t.getSubject(), t.getPredicate(), Node.ANY);
            if (!replaced) {
                all.add(t);
            }
        });
        overlay.find().forEachRemaining(all::add);
        return all;
    }
}
