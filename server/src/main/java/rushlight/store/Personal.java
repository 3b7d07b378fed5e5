package rushlight.store;

import java.io.OutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.apache.jena.dboe.base.file.Location;
import org.apache.jena.riot.RDFDataMgr;
import org.apache.jena.riot.RDFFormat;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.DatasetGraphFactory;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.tdb2.DatabaseMgr;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What a store has of single people, wherever it stands: he may have it, and he may have it gone. */
public final class Personal {
    private static final Logger LOG = LoggerFactory.getLogger(Personal.class);

    private final Transactions transactions;

    Personal(Transactions transactions) {
        this.transactions = transactions;
    }

    /** Writes everything of one prospect, from every graph, as TriG. */
    public void write(String prospect, OutputStream out) {
        transactions.read(data -> {
            DatasetGraph his = DatasetGraphFactory.create();
            new PersonalData(data, prospect).quads().forEach(his::add);
            RDFDataMgr.write(out, his, RDFFormat.TRIG_BLOCKS);
            return his;
        });
    }

    /** Takes out everything of one prospect; what the files still hold goes when they are compacted. */
    public Erased erase(String prospect, Instant when) {
        Erased erased = transactions.write(data -> erased(data, prospect, when));
        transactions.remote().ifPresent(Personal::clearStaged);
        return erased;
    }

    /** Whatever somebody was about to change elsewhere may name him, and comes too late now. */
    private static void clearStaged(RemoteStore there) {
        try {
            there.clearStaged(true);
        } catch (RemoteStoreException e) {
            LOG.info("What was laid down for changes goes with the next opening after a day: {}", e.getMessage());
        }
    }

    /** Writes the files of the store anew, without what was taken out. */
    public void compact() {
        DatasetGraph data = transactions.data();
        Location place = DatabaseMgr.location(data);
        if (place != null && !place.isMem()) {
            transactions.room().told(() -> {
                DatabaseMgr.compact(data, true);
                return true;
            });
        }
    }

    private static Erased erased(DatasetGraph data, String prospect, Instant when) {
        PersonalData his = new PersonalData(data, prospect);
        long logs = data.getDefaultGraph().stream(null, Terms.PROSPECT, Addresses.prospect(prospect))
                .count();
        List<Quad> quads = his.quads();
        List<Quad> mentions = his.mentions();
        quads.forEach(data::delete);
        for (Quad mention : mentions) {
            data.delete(mention);
            data.add(his.withoutName(mention));
        }
        // Which logs went is not told: their addresses name him.
        long revision = StoredRevision.raise(data, Set.of(), when);
        History.tell(data, revision, Change.Note.of(Change.Kind.ERASE, "Erased everything of one player."));
        long ofOthers = mentions.stream()
                .filter(mention -> !mention.getGraph().equals(Addresses.HISTORY))
                .count();
        return new Erased(logs, quads.size(), ofOthers);
    }
}
