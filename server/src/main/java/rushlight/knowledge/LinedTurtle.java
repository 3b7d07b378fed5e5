package rushlight.knowledge;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalLong;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.irix.IRIxResolver;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParserRegistry;
import org.apache.jena.riot.RiotException;
import org.apache.jena.riot.system.ErrorHandlerFactory;
import org.apache.jena.riot.system.FactoryRDFStd;
import org.apache.jena.riot.system.ParserProfileStd;
import org.apache.jena.riot.system.PrefixMapFactory;
import org.apache.jena.riot.system.StreamRDFLib;
import org.apache.jena.sparql.graph.GraphFactory;
import org.apache.jena.sparql.util.Context;

/** A Turtle file that remembers on which line each statement stands, so that a fault can be found again. */
final class LinedTurtle {
    private final Graph graph = GraphFactory.createDefaultGraph();
    private final Map<Triple, Long> lines = new HashMap<>();

    private LinedTurtle() {}

    static LinedTurtle empty() {
        return new LinedTurtle();
    }

    /**
     * Reads a file.
     *
     * @throws BrokenBookException where it is not Turtle, naming line and column
     */
    static LinedTurtle read(String name, byte[] bytes) {
        LinedTurtle read = new LinedTurtle();
        String text = new String(bytes, StandardCharsets.UTF_8);
        try {
            RDFParserRegistry.getFactory(Lang.TURTLE)
                    .create(Lang.TURTLE, read.new Profile())
                    .read(new StringReader(text), null, null, StreamRDFLib.graph(read.graph), Context.create());
        } catch (RiotException e) {
            throw new BrokenBookException(name + " cannot be read as Turtle: " + e.getMessage());
        }
        return read;
    }

    Graph graph() {
        return graph;
    }

    /** The line of one statement, counted from 1. */
    OptionalLong line(Triple statement) {
        Long line = lines.get(statement);
        return line == null ? OptionalLong.empty() : OptionalLong.of(line);
    }

    /** The first line that speaks of a subject. */
    OptionalLong line(Node subject) {
        return graph.find(subject, Node.ANY, Node.ANY).toList().stream()
                .flatMapToLong(t -> line(t).stream())
                .min();
    }

    private final class Profile extends ParserProfileStd {
        Profile() {
            super(
                    new FactoryRDFStd(),
                    ErrorHandlerFactory.errorHandlerStrictNoLogging,
                    IRIxResolver.create().noBase().allowRelative(false).build(),
                    PrefixMapFactory.create(),
                    Context.create(),
                    true,
                    true);
        }

        @Override
        public Triple createTriple(Node subject, Node predicate, Node object, long line, long column) {
            Triple made = super.createTriple(subject, predicate, object, line, column);
            lines.merge(made, line, Math::min);
            return made;
        }
    }
}
