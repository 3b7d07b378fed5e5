package rushlight.store;

import java.io.InputStream;
import java.io.OutputStream;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.riot.RiotException;
import org.apache.jena.riot.system.ErrorHandlerFactory;
import org.apache.jena.riot.system.StreamRDFLib;
import org.apache.jena.riot.writer.NQuadsWriter;
import org.apache.jena.sparql.core.DatasetGraph;

/** A whole store as lines of N-Quads (W3C, RDF 1.1 N-Quads), one statement at a time, however many there are. */
final class Quads {
    private Quads() {}

    static void write(DatasetGraph graphs, OutputStream out) {
        NQuadsWriter.write(out, graphs.find());
    }

    /** Reads lines into a store; the first that is none ends it. */
    static void read(InputStream in, DatasetGraph graphs) {
        try {
            RDFParser.source(in)
                    .lang(Lang.NQUADS)
                    .errorHandler(ErrorHandlerFactory.errorHandlerStrictNoLogging)
                    .parse(StreamRDFLib.dataset(graphs));
        } catch (RiotException e) {
            throw new UnreadableStatementsException(String.valueOf(e.getMessage()), e);
        }
    }
}
