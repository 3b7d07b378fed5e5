package rushlight.store;

import java.io.OutputStream;
import java.time.Instant;
import org.apache.jena.dboe.base.file.Location;
import org.apache.jena.riot.RDFDataMgr;
import org.apache.jena.riot.RDFFormat;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.DatasetGraphFactory;
import org.apache.jena.system.Txn;
import org.apache.jena.tdb2.DatabaseMgr;

/** What a store has of single people, wherever it stands: he may have it, and he may have it gone. */
public final class Personal {
    private final DatasetGraph data;

    Personal(DatasetGraph data) {
        this.data = data;
    }

    /** Writes everything of one prospect, from every graph, as TriG. */
    public void write(String prospect, OutputStream out) {
        Txn.executeRead(data, () -> {
            DatasetGraph his = DatasetGraphFactory.create();
            new PersonalData(data, prospect).quads().forEach(his::add);
            RDFDataMgr.write(out, his, RDFFormat.TRIG_BLOCKS);
        });
    }

    /** Takes out everything of one prospect; what the files still hold goes when they are compacted. */
    public Erased erase(String prospect, Instant when) {
        return Txn.calculateWrite(data, () -> Erasing.erase(data, prospect, when));
    }

    /** Writes the files of the store anew, without what was taken out. */
    public void compact() {
        Location place = DatabaseMgr.location(data);
        if (place != null && !place.isMem()) {
            DatabaseMgr.compact(data, true);
        }
    }
}
