package rushlight.store;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.riot.system.StreamRDF;
import org.apache.jena.sparql.core.Quad;
import org.jspecify.annotations.Nullable;
import rushlight.store.RemoteStoreException.Kind;

/**
 * A store on another machine in which the film is kept, with what is asked of it. The film stands there in the default graph,
 * the rest in graphs of its own, as in the store of a folder.
 */
public final class RemoteStore {
    private static final String ASK_STATE = "SELECT ?isMixed ?what ?value WHERE { { GRAPH <" + Standing.GRAPH + "> { <"
            + Addresses.ARCHIVE + "> ?what ?value } BIND(false AS ?isMixed) } UNION { <" + Addresses.ARCHIVE
            + "> ?what ?value BIND(true AS ?isMixed) FILTER(?what = <" + Standing.LINEAGE + ">) } }";
    private static final String ASK_GRAPHS = "SELECT DISTINCT ?graph WHERE { GRAPH ?graph { ?s ?p ?o } }";
    private static final String ASK_SIZE =
            "SELECT (COUNT(?s) AS ?many) WHERE { { ?s ?p ?o } UNION { GRAPH ?g { ?s ?p ?o } } }";
    private static final String ASK_FILM = "SELECT ?s WHERE { ?s ?p ?o } LIMIT 1";

    private final RemoteAddress address;
    private final RemoteClient client;

    private RemoteStore(RemoteAddress address, RemoteClient client) {
        this.address = address;
        this.client = client;
    }

    /**
     * Names a store; nothing is asked of it yet.
     *
     * @param patience how long to wait for an answer
     * @throws RemoteStoreException where the password would be sent for everybody to read
     */
    public static RemoteStore at(RemoteAddress address, Optional<RemoteLogin> login, Duration patience) {
        if (login.isPresent() && !address.isPrivate()) {
            throw new RemoteStoreException(
                    Kind.UNFIT,
                    "The password of the store at " + address + " would be sent for everybody in between to read. Name"
                            + " its address with https.",
                    null);
        }
        return new RemoteStore(address, new RemoteClient(address, login, patience));
    }

    /** Where it is. */
    public RemoteAddress address() {
        return address;
    }

    /**
     * Which state it holds; all empty where nothing was ever kept there.
     *
     * @throws RemoteStoreException where it cannot be reached, or keeps no graph apart from the others
     */
    Standing state() {
        String[] found = new String[4];
        List<Node> names = List.of(Standing.LINEAGE, Standing.STAMP, Standing.FILLING, Standing.MADE);
        client.select(ASK_STATE, row -> {
            if (row.getLiteral("isMixed").getBoolean()) {
                throw mixed();
            }
            int at = names.indexOf(row.get("what").asNode());
            if (at >= 0) {
                found[at] = row.getLiteral("value").getLexicalForm();
            }
        });
        return new Standing(told(found[0]), told(found[1]), told(found[2]), told(found[3]));
    }

    private static Optional<String> told(@Nullable String found) {
        return Optional.ofNullable(found);
    }

    /** The graphs of ours that hold anything, but for the default graph and those that tell of the state. */
    Set<Node> graphs() {
        Set<Node> graphs = named();
        graphs.removeIf(graph -> !graph.isURI()
                || !graph.getURI().startsWith(Addresses.DATA)
                || graph.equals(Standing.GRAPH)
                || Staged.isOne(graph));
        return graphs;
    }

    /** How many statements it holds. */
    long size() {
        long[] many = new long[1];
        client.select(ASK_SIZE, row -> many[0] = row.getLiteral("many").getLong());
        return many[0];
    }

    /** Clears away changes that were laid down and never made: what others may still be about to make, too, or not. */
    void clearStaged(boolean ofOthersToo) {
        Instant now = Instant.now();
        named().stream()
                .filter(Staged::isOne)
                .filter(graph -> ofOthersToo || Staged.isLeft(graph, now))
                .forEach(graph -> client.update(Guarded.dropping(graph)));
    }

    private Set<Node> named() {
        Set<Node> graphs = new HashSet<>();
        client.select(ASK_GRAPHS, row -> graphs.add(row.get("graph").asNode()));
        return graphs;
    }

    /** Whether nothing stands where the film would. */
    boolean isEmpty() {
        boolean[] any = new boolean[1];
        client.select(ASK_FILM, row -> any[0] = true);
        return !any[0] && graphs().isEmpty();
    }

    /**
     * Makes a change, provided that a state still stands; whether it did is to be asked afterwards.
     *
     * @param old that state, which has a stamp
     * @param next the state it leads to
     */
    void change(Difference difference, Standing old, Standing next) {
        Quad stamp = Standing.quad(Standing.STAMP, old.stamp().orElseThrow());
        if (difference.size() > Staged.SMALL) {
            Staged staged = Staged.lay(difference, this);
            client.update(Guarded.update(staged, old.quads(), next.quads(), stamp), difference.size());
        } else {
            client.update(Guarded.update(
                    with(difference.removed(), old.quads()), with(difference.added(), next.quads()), stamp));
        }
    }

    /** Gives the same film another stamp, provided that a state still stands. */
    void restamp(Standing old, String next) {
        change(new Difference(Set.of(), Set.of()), old, old.at(next));
    }

    /** Begins to fill a store that is empty, provided that nobody else does. */
    void beginFilling(Standing mine) {
        client.update(Guarded.whereNothingStands(mine.quads()));
    }

    /** Ends filling it, provided that nobody else does. */
    void endFilling(String filling) {
        Quad mark = Standing.quad(Standing.FILLING, filling);
        client.update(Guarded.update(List.of(mark), List.of(Standing.quad(Standing.STAMP, filling)), mark));
    }

    /** Takes back that filling was begun. */
    void forgetFilling(Standing mine) {
        Quad mark = Standing.quad(Standing.FILLING, mine.filling().orElseThrow());
        client.update(Guarded.update(mine.quads(), List.of(), mark));
    }

    /** Takes everything out of a graph. */
    void clear(Node graph) {
        client.update(Guarded.clearing(graph));
    }

    /** Adds triples to a graph. */
    void add(Node graph, Graph triples) {
        client.add(graph, triples);
    }

    /** Reads a graph, triple by triple. */
    void fetch(Node graph, StreamRDF into) {
        client.fetch(graph, into);
    }

    private static List<Quad> with(Collection<Quad> quads, Collection<Quad> others) {
        return Stream.concat(quads.stream(), others.stream()).toList();
    }

    RemoteStoreException stale() {
        return new RemoteStoreException(
                Kind.STALE,
                "Somebody else has changed the film in the store at " + address
                        + " meanwhile. Nothing of yours was stored."
                        + " What he changed is in your folder now: look at it, and do it again.",
                null);
    }

    RemoteStoreException overtaken() {
        return new RemoteStoreException(
                Kind.OVERTAKEN,
                "Your change is stored at " + address + ", and somebody else has changed more after it. Your folder"
                        + " fetches both: look at them, and do not make the change again.",
                null);
    }

    RemoteStoreException neverInStep() {
        return new RemoteStoreException(
                Kind.AWAY,
                "This folder was never in step with the store at " + address
                        + ". Nothing was changed. Open it again when the store can be reached.",
                null);
    }

    RemoteStoreException undecided(RemoteStoreException why) {
        return new RemoteStoreException(
                Kind.AWAY,
                "The store at " + address
                        + " was sent the change and cannot be asked whether it has it. Here it was not"
                        + " stored; if it is there, it comes back when this folder is next in step with it. Look before you do"
                        + " it again. (" + why.getMessage() + ")",
                why);
    }

    RemoteStoreException ahead(RuntimeException why) {
        return new RemoteStoreException(
                Kind.AHEAD,
                "The store at " + address + " has the change, but it could not be written to this folder: "
                        + why.getMessage()
                        + " The folder fetches it when it is opened next; do not make the change again.",
                why);
    }

    private RemoteStoreException mixed() {
        return new RemoteStoreException(
                Kind.UNFIT,
                "The store at " + address
                        + " shows all its graphs in the default graph, so that film and history would be"
                        + " mixed up. Turn that off (in Fuseki: tdb2:unionDefaultGraph false), or name another store. No film"
                        + " was sent.",
                null);
    }
}
