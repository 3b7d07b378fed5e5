package rushlight.store;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.sparql.graph.GraphFactory;

/**
 * A large change, laid down in graphs of its own beside the film before it is made: the update that makes it then names those
 * graphs instead of every statement. Nobody reads them as film.
 *
 * @param removed by graph of the film, where the statements lie that are taken out of it
 * @param added by graph of the film, where the statements lie that are put into it
 * @param witnesses one statement of every part that was laid down: where one is missing, the change is not whole any more
 */
record Staged(Map<Node, Node> removed, Map<Node, Node> added, List<Quad> witnesses) {
    /** Up to so many statements are named in the update itself. */
    static final int SMALL = 2_000;

    private static final String START = Standing.GRAPH.getURI() + "/staged/";
    private static final Duration LONGEST = Duration.ofDays(1);
    private static final int AT_ONCE = 50_000;

    /** Lays a change down. */
    static Staged lay(Difference difference, RemoteStore there) {
        String start = START + Instant.now().toEpochMilli() + "-" + Standing.fresh() + "/";
        List<Quad> witnesses = new ArrayList<>();
        Map<Node, Node> removed = lay(difference.removed(), start + "removed/", there, witnesses);
        Map<Node, Node> added = lay(difference.added(), start + "added/", there, witnesses);
        return new Staged(removed, added, witnesses);
    }

    private static Map<Node, Node> lay(Collection<Quad> quads, String start, RemoteStore there, List<Quad> witnesses) {
        Map<Node, Node> places = new LinkedHashMap<>();
        Map<Node, Graph> waiting = new LinkedHashMap<>();
        for (Quad quad : quads) {
            Guarded.demandNames(quad);
            Node place = places.computeIfAbsent(quad.getGraph(), graph -> NodeFactory.createURI(start + places.size()));
            Graph some = waiting.computeIfAbsent(place, ignored -> GraphFactory.createDefaultGraph());
            if (some.isEmpty()) {
                witnesses.add(Quad.create(place, quad.asTriple()));
            }
            some.add(quad.asTriple());
            if (some.size() == AT_ONCE) {
                there.add(place, some);
                waiting.remove(place);
            }
        }
        waiting.forEach(there::add);
        return places;
    }

    /** Where anything lies. */
    List<Node> places() {
        List<Node> places = new ArrayList<>(removed.values());
        places.addAll(added.values());
        return places;
    }

    static boolean isOne(Node graph) {
        return graph.isURI() && graph.getURI().startsWith(START);
    }

    /** Whether it was laid down so long ago that whoever did it is not going to use it any more. */
    static boolean isLeft(Node graph, Instant now) {
        return when(graph).map(then -> then.plus(LONGEST).isBefore(now)).orElse(true);
    }

    private static Optional<Instant> when(Node graph) {
        String digits = graph.getURI().substring(START.length()).replaceAll("-.*", "");
        return digits.matches("\\d{1,15}")
                ? Optional.of(Instant.ofEpochMilli(Long.parseLong(digits)))
                : Optional.empty();
    }
}
