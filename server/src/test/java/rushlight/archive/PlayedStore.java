package rushlight.archive;

import jakarta.servlet.Filter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntSupplier;
import org.apache.jena.atlas.iterator.Iter;
import org.apache.jena.atlas.web.AuthScheme;
import org.apache.jena.fuseki.auth.Auth;
import org.apache.jena.fuseki.main.FusekiServer;
import org.apache.jena.graph.Node;
import org.apache.jena.riot.out.NodeFmtLib;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.DatasetGraphFactory;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.system.Txn;
import rushlight.store.RemoteLogin;

/** A SPARQL store "on another machine": a real one, on a port of this machine, whose troubles a test makes up. */
public final class PlayedStore implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final DatasetGraph data;
    private final AtomicReference<IntSupplier> beforeChange = new AtomicReference<>();
    private final AtomicReference<IntSupplier> afterChange = new AtomicReference<>();
    private volatile int refusal;
    private final FusekiServer server;

    private PlayedStore(DatasetGraph data, Optional<Path> passwords) {
        this.data = data;
        FusekiServer.Builder builder =
                FusekiServer.create().loopback(true).port(0).add("/film", data).addFilter("/*", troubles());
        passwords.ifPresent(file -> builder.passwordFile(file.toString())
                .auth(AuthScheme.BASIC)
                .realm("film")
                .serverAuthPolicy(Auth.ANY_USER));
        this.server = builder.build().start();
    }

    public static PlayedStore start() {
        return of(DatasetGraphFactory.createTxnMem());
    }

    public static PlayedStore of(DatasetGraph data) {
        return new PlayedStore(data, Optional.empty());
    }

    /** One that asks for a password; the file has a line of name and password. */
    static PlayedStore guarded(Path passwords) {
        return new PlayedStore(DatasetGraphFactory.createTxnMem(), Optional.of(passwords));
    }

    public String address() {
        return "http://localhost:" + port() + "/film";
    }

    int port() {
        return server.getPort();
    }

    public KeptAt place() {
        return new KeptAt(Optional.of(address()), Optional.empty(), PATIENCE);
    }

    KeptAt place(String login) {
        return new KeptAt(Optional.of(address()), Optional.of(RemoteLogin.of(login)), PATIENCE);
    }

    static KeptAt asBefore() {
        return new KeptAt(Optional.empty(), Optional.empty(), PATIENCE);
    }

    static KeptAt at(String address) {
        return new KeptAt(Optional.of(address), Optional.empty(), PATIENCE);
    }

    /** Once, before the next change reaches the store; answers with a status instead, unless that is 0. */
    void beforeNextChange(IntSupplier what) {
        beforeChange.set(what);
    }

    /** Once, after the next change was made; answers with a status instead, unless that is 0. */
    void afterNextChange(IntSupplier what) {
        afterChange.set(what);
    }

    /** From now on it may be read and not changed: every change is answered with a status. */
    void refuseChanges(int status) {
        refusal = status;
    }

    /** Clears away one of the graphs in which a large change was laid down, as others do whose clock is wrong. */
    void loseOneThatWasLaidDown() {
        Txn.executeWrite(data, () -> {
            Node one = Iter.toList(data.listGraphNodes()).stream()
                    .filter(graph -> graph.toString().contains("/staged/"))
                    .sorted((a, b) -> a.toString().compareTo(b.toString()))
                    .findFirst()
                    .orElseThrow();
            data.deleteAny(one, Node.ANY, Node.ANY, Node.ANY);
        });
    }

    /** Everything it holds but for the marks of its state, as lines in order. */
    Set<String> film() {
        return lines(data);
    }

    static Set<String> lines(DatasetGraph data) {
        Set<String> lines = new TreeSet<>();
        Txn.executeRead(
                data,
                () -> data.find().forEachRemaining(quad -> {
                    if (!quad.getGraph().toString().endsWith("/data/sync")) {
                        lines.add(line(quad));
                    }
                }));
        return lines;
    }

    private static String line(Quad quad) {
        String graph = quad.isDefaultGraph() ? "film" : NodeFmtLib.strNT(quad.getGraph());
        return graph + " " + NodeFmtLib.strNT(quad.getSubject()) + " " + NodeFmtLib.strNT(quad.getPredicate()) + " "
                + NodeFmtLib.strNT(quad.getObject());
    }

    /** Says something in the store behind everybody's back. */
    void say(Quad quad) {
        Txn.executeWrite(data, () -> data.add(quad));
    }

    /** Loses everything, as one does that was kept in memory. */
    public void loseEverything() {
        Txn.executeWrite(data, () -> data.deleteAny(Node.ANY, Node.ANY, Node.ANY, Node.ANY));
    }

    private Filter troubles() {
        return (request, response, chain) -> {
            boolean changes = ((HttpServletRequest) request).getRequestURI().endsWith("/update");
            if (refusal > 0 && !((HttpServletRequest) request).getRequestURI().endsWith("/query")) {
                ((HttpServletResponse) response).setStatus(refusal);
                return;
            }
            if (!changes || !answered(beforeChange, (HttpServletResponse) response)) {
                chain.doFilter(request, response);
                if (changes) {
                    answered(afterChange, (HttpServletResponse) response);
                }
            }
        };
    }

    private static boolean answered(AtomicReference<IntSupplier> trouble, HttpServletResponse response)
            throws IOException {
        IntSupplier now = trouble.getAndSet(null);
        int status = now == null ? 0 : now.getAsInt();
        if (status > 0) {
            response.reset();
            response.setStatus(status);
        }
        return status > 0;
    }

    @Override
    public void close() {
        server.stop();
    }
}
