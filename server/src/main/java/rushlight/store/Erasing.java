package rushlight.store;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.Quad;

/** Takes a prospect out of every graph, inside of a transaction. */
final class Erasing {
    private Erasing() {}

    static Erased erase(DatasetGraph data, String prospect, Instant when) {
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
