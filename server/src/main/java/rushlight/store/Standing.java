package rushlight.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.Quad;
import rushlight.knowledge.Rl;

/**
 * Which state of which film a store holds. It stands in a graph of its own, in the store elsewhere and in every copy of it.
 *
 * @param lineage the film, whatever its state: the same in a store and its copies
 * @param stamp the state; another one after every change
 * @param filling the state it will have once it is filled; only while that is going on, or after it was cut off
 * @param made the last few states that changes led to, the newest first, with blanks between: so that whoever lost the answer
 *     to a change learns that it was made, though others made more since
 */
record Standing(Optional<String> lineage, Optional<String> stamp, Optional<String> filling, Optional<String> made) {
    private static final int REMEMBERED = 16;

    static final Node GRAPH = NodeFactory.createURI(Addresses.DATA + "sync");
    static final Node LINEAGE = Rl.term("lineage");
    static final Node STAMP = Rl.term("stamp");
    static final Node FILLING = Rl.term("filling");
    static final Node MADE = Rl.term("made");

    /** Nothing is kept elsewhere. */
    static final Standing NONE = new Standing(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    static Standing of(DatasetGraph data) {
        return new Standing(value(data, LINEAGE), value(data, STAMP), value(data, FILLING), value(data, MADE));
    }

    static String fresh() {
        return UUID.randomUUID().toString();
    }

    static Quad quad(Node property, String value) {
        return Quad.create(GRAPH, Addresses.ARCHIVE, property, Literals.of(value));
    }

    /** Whether a statement belongs to the film and what is kept beside it. */
    static boolean isFilm(Quad quad) {
        return !quad.getGraph().equals(GRAPH);
    }

    /** In another state of the same film that no change led to. */
    Standing at(String next) {
        return new Standing(lineage, Optional.of(next), Optional.empty(), made);
    }

    /** In the state that a change leads to. */
    Standing changedTo(String next) {
        String trail =
                Stream.concat(Stream.of(next), states()).limit(REMEMBERED).collect(Collectors.joining(" "));
        return new Standing(lineage, Optional.of(next), Optional.empty(), Optional.of(trail));
    }

    /** Whether a change led to a state, not long ago. */
    boolean wasAt(String state) {
        return states().anyMatch(state::equals);
    }

    private Stream<String> states() {
        return made.stream().flatMap(text -> Stream.of(text.split(" ", -1)));
    }

    /** What tells of it. */
    List<Quad> quads() {
        List<Quad> quads = new ArrayList<>();
        lineage.ifPresent(value -> quads.add(quad(LINEAGE, value)));
        stamp.ifPresent(value -> quads.add(quad(STAMP, value)));
        filling.ifPresent(value -> quads.add(quad(FILLING, value)));
        made.ifPresent(value -> quads.add(quad(MADE, value)));
        return quads;
    }

    /** Writes it in place of what stood there, within a transaction. */
    void write(DatasetGraph data) {
        data.deleteAny(GRAPH, Node.ANY, Node.ANY, Node.ANY);
        quads().forEach(data::add);
    }

    private static Optional<String> value(DatasetGraph data, Node property) {
        return Literals.text(data.getGraph(GRAPH), Addresses.ARCHIVE, property);
    }
}
