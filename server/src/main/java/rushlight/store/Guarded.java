package rushlight.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.sparql.core.Var;
import org.apache.jena.sparql.expr.E_NotExists;
import org.apache.jena.sparql.modify.request.Target;
import org.apache.jena.sparql.modify.request.UpdateClear;
import org.apache.jena.sparql.modify.request.UpdateDrop;
import org.apache.jena.sparql.modify.request.UpdateModify;
import org.apache.jena.sparql.syntax.Element;
import org.apache.jena.sparql.syntax.ElementFilter;
import org.apache.jena.sparql.syntax.ElementGroup;
import org.apache.jena.sparql.syntax.ElementNamedGraph;
import org.apache.jena.sparql.syntax.ElementTriplesBlock;
import org.apache.jena.sparql.syntax.ElementUnion;
import org.apache.jena.update.Update;
import org.apache.jena.update.UpdateRequest;

/** SPARQL updates that apply only to a certain state. They are built of terms, so that no text can become a command. */
final class Guarded {
    private Guarded() {}

    /** Takes out and puts in, provided that a statement stands. */
    static Update update(Collection<Quad> removed, Collection<Quad> added, Quad standing) {
        return modify(removed, added, group(block(standing.getGraph(), standing.asTriple())));
    }

    /** Puts in, provided that nothing stands in the graph that tells the state. */
    static Update whereNothingStands(Collection<Quad> added) {
        ElementGroup anything =
                group(block(Standing.GRAPH, Triple.create(Var.alloc("s"), Var.alloc("p"), Var.alloc("o"))));
        return modify(List.of(), added, group(new ElementFilter(new E_NotExists(anything))));
    }

    /**
     * Takes out and puts in what was laid down beside the film, provided that a statement stands and all of it still lies
     * there; then clears that away.
     */
    static UpdateRequest update(Staged staged, Collection<Quad> removed, Collection<Quad> added, Quad standing) {
        ElementUnion any = new ElementUnion();
        List<Quad> out = new ArrayList<>(removed);
        staged.removed().forEach((graph, place) -> out.add(all(graph, place, any)));
        List<Quad> in = new ArrayList<>(added);
        staged.added().forEach((graph, place) -> in.add(all(graph, place, any)));
        ElementGroup group = new ElementGroup();
        group.addElement(block(standing.getGraph(), standing.asTriple()));
        staged.witnesses().forEach(quad -> group.addElement(block(quad.getGraph(), quad.asTriple())));
        group.addElement(any);
        UpdateRequest request = new UpdateRequest(modify(out, in, group));
        staged.places().forEach(place -> request.add(new UpdateDrop(place, true)));
        return request;
    }

    private static Quad all(Node graph, Node place, ElementUnion any) {
        int number = any.getElements().size();
        Triple triple = Triple.create(Var.alloc("s" + number), Var.alloc("p" + number), Var.alloc("o" + number));
        any.addElement(block(place, triple));
        return Quad.create(graph, triple);
    }

    static Update dropping(Node graph) {
        return new UpdateDrop(graph, true);
    }

    static Update clearing(Node graph) {
        return new UpdateClear(Quad.isDefaultGraph(graph) ? Target.DEFAULT : Target.create(graph), true);
    }

    private static Update modify(Collection<Quad> removed, Collection<Quad> added, ElementGroup where) {
        UpdateModify modify = new UpdateModify();
        removed.forEach(quad -> modify.getDeleteAcc().addQuad(named(quad)));
        added.forEach(quad -> modify.getInsertAcc().addQuad(named(quad)));
        modify.setHasDeleteClause(!removed.isEmpty());
        modify.setHasInsertClause(!added.isEmpty());
        modify.setElement(where);
        return modify;
    }

    private static ElementGroup group(Element only) {
        ElementGroup group = new ElementGroup();
        group.addElement(only);
        return group;
    }

    private static Quad named(Quad quad) {
        demandNames(quad);
        return quad;
    }

    /** @throws IllegalArgumentException for what has no name: another store would know it by another one */
    static void demandNames(Quad quad) {
        if (quad.getSubject().isBlank() || quad.getObject().isBlank()) {
            throw new IllegalArgumentException("What has no name cannot be kept in a store elsewhere: " + quad);
        }
    }

    private static Element block(Node graph, Triple triple) {
        ElementTriplesBlock triples = new ElementTriplesBlock();
        triples.addTriple(triple);
        return new ElementNamedGraph(graph, triples);
    }
}
