package rushlight.store;

import java.io.InputStream;
import java.io.OutputStream;
import org.apache.jena.atlas.iterator.Iter;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.riot.RiotException;
import org.apache.jena.riot.system.ErrorHandlerFactory;
import org.apache.jena.riot.system.StreamRDFLib;
import org.apache.jena.riot.writer.NQuadsWriter;

/** A whole store as lines of N-Quads (W3C, RDF 1.1 N-Quads), one statement at a time, however many there are. */
public final class Whole {
    private final Transactions transactions;

    Whole(Transactions transactions) {
        this.transactions = transactions;
    }

    /**
     * Writes film, history and what is kept as they are at one moment; writers need not wait.
     *
     * @param fixed called once that moment is fixed, whatever is written from then on
     */
    public Holdings write(OutputStream out, Runnable fixed) {
        return transactions.read(data -> {
            fixed.run();
            NQuadsWriter.write(out, Iter.filter(data.find(), Standing::isFilm));
            return Holdings.of(data);
        });
    }

    /**
     * Reads what {@link #write} wrote into a store that is empty: all of it or nothing.
     *
     * @throws UnreadableStatementsException at the first line that is none
     */
    public Holdings read(InputStream in) {
        return transactions.write(data -> {
            try {
                RDFParser.source(in)
                        .lang(Lang.NQUADS)
                        .errorHandler(ErrorHandlerFactory.errorHandlerStrictNoLogging)
                        .parse(StreamRDFLib.dataset(data));
            } catch (RiotException e) {
                throw new UnreadableStatementsException(String.valueOf(e.getMessage()), e);
            }
            return Holdings.of(data);
        });
    }

    /** How much of everything there is. */
    public Holdings holdings() {
        return transactions.read(Holdings::of);
    }
}
