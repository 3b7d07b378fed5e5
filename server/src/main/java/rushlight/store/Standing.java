package rushlight.store;

import java.util.Optional;
import java.util.UUID;
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
 */
record Standing(Optional<String> lineage, Optional<String> stamp, Optional<String> filling) {
    static final Node GRAPH = NodeFactory.createURI(Addresses.DATA + "sync");
    static final Node LINEAGE = Rl.term("lineage");
    static final Node STAMP = Rl.term("stamp");
    static final Node FILLING = Rl.term("filling");

    /** Nothing is kept elsewhere. */
    static final Standing NONE = new Standing(Optional.empty(), Optional.empty(), Optional.empty());

    static Standing of(DatasetGraph data) {
        return new Standing(value(data, LINEAGE), value(data, STAMP), value(data, FILLING));
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

    Standing at(String next) {
        return new Standing(lineage, Optional.of(next), Optional.empty());
    }

    /** Writes it in place of what stood there, within a transaction. */
    void write(DatasetGraph data) {
        data.deleteAny(GRAPH, Node.ANY, Node.ANY, Node.ANY);
        lineage.ifPresent(value -> data.add(quad(LINEAGE, value)));
        stamp.ifPresent(value -> data.add(quad(STAMP, value)));
        filling.ifPresent(value -> data.add(quad(FILLING, value)));
    }

    private static Optional<String> value(DatasetGraph data, Node property) {
        return Literals.text(data.getGraph(GRAPH), Addresses.ARCHIVE, property);
    }
}
