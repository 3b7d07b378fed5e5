package rushlight.store;

import org.apache.jena.atlas.iterator.Iter;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.vocabulary.RDF;

/**
 * How much a store holds, counted in one state of it.
 *
 * @param revision number of the last change of the film
 * @param logs film logs
 * @param readings readings in them
 * @param kept what people keep beside the film: questions, opinions, projections, decisions, report texts
 * @param changes changes that the history tells of
 * @param statements statements of all graphs, but for those that tell which store this is a copy of
 */
public record Holdings(long revision, long logs, long readings, long kept, long changes, long statements) {
    private static final Node TYPE = RDF.type.asNode();

    static Holdings of(DatasetGraph graphs) {
        return new Holdings(
                StoredRevision.current(graphs),
                Iter.count(graphs.getDefaultGraph().find(Node.ANY, TYPE, Terms.LOG_CLASS)),
                Iter.count(graphs.getDefaultGraph().find(Node.ANY, TYPE, Terms.READING_CLASS)),
                Iter.count(
                        Iter.distinct(graphs.getGraph(KeptThings.GRAPH).find().mapWith(Triple::getSubject))),
                Iter.count(graphs.find(Addresses.HISTORY, Node.ANY, Terms.REVISION, Node.ANY)),
                Iter.count(Iter.filter(graphs.find(), Standing::isFilm)));
    }
}
