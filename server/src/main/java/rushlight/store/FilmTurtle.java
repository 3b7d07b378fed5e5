package rushlight.store;

import java.io.OutputStream;
import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Graph;
import org.apache.jena.riot.RDFFormat;
import org.apache.jena.riot.system.StreamRDF;
import org.apache.jena.riot.system.StreamRDFWriter;
import org.apache.jena.vocabulary.RDFS;
import rushlight.knowledge.Rl;

/** Writes film as Turtle, a block for each thing. */
final class FilmTurtle {
    private FilmTurtle() {}

    static void write(Graph film, OutputStream out) {
        StreamRDF turtle = StreamRDFWriter.getWriterStream(out, RDFFormat.TURTLE_BLOCKS);
        turtle.start();
        turtle.prefix("rl", Rl.SCHEMA);
        turtle.prefix("kb", Rl.CONCEPT);
        turtle.prefix("data", Addresses.DATA);
        turtle.prefix("prov", "http://www.w3.org/ns/prov#");
        turtle.prefix("rdfs", RDFS.getURI());
        turtle.prefix("xsd", XSDDatatype.XSD + "#");
        film.find().forEachRemaining(turtle::triple);
        turtle.finish();
    }
}
