package rushlight.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Authenticator;
import java.net.PasswordAuthentication;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.apache.jena.atlas.RuntimeIOException;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.query.QueryExecution;
import org.apache.jena.query.QuerySolution;
import org.apache.jena.rdfconnection.RDFConnection;
import org.apache.jena.rdfconnection.RDFConnectionRemote;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFDataMgr;
import org.apache.jena.riot.RDFFormat;
import org.apache.jena.riot.RDFLanguages;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.riot.RiotException;
import org.apache.jena.riot.system.ErrorHandlerFactory;
import org.apache.jena.riot.system.StreamRDF;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.update.Update;
import org.apache.jena.update.UpdateRequest;
import org.jspecify.annotations.Nullable;

/** Speaks the protocols of SPARQL 1.1 with a store on another machine. Every failure is told as a sentence. */
final class RemoteClient {
    private static final int SUCCESS = 2;
    private static final int GONE = 404;
    private static final String LINES = "application/n-triples, text/turtle;q=0.5";

    private final RemoteAddress address;
    private final Duration patience;
    private final HttpClient http;
    private final RemoteFailures failures;

    RemoteClient(RemoteAddress address, Optional<RemoteLogin> login, Duration patience) {
        this.address = address;
        this.patience = patience;
        this.failures = new RemoteFailures(address);
        HttpClient.Builder builder = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .followRedirects(HttpClient.Redirect.NEVER)
                .connectTimeout(patience);
        login.ifPresent(who -> builder.authenticator(new Authenticator() {
            @Override
            protected @Nullable PasswordAuthentication getPasswordAuthentication() {
                if (getRequestorType() != RequestorType.SERVER) {
                    return null; // a proxy in between is not who the password is for
                }
                return new PasswordAuthentication(who.user(), who.password().toCharArray());
            }
        }));
        this.http = builder.build();
    }

    /** Asks, and hands out every row of the answer. */
    void select(String query, Consumer<QuerySolution> row) {
        failures.told(() -> {
            try (RDFConnection connection = connection();
                    QueryExecution asked = connection
                            .newQuery()
                            .query(query)
                            .timeout(patience.toMillis(), TimeUnit.MILLISECONDS)
                            .build()) {
                asked.execSelect().forEachRemaining(row);
            }
        });
    }

    void update(Update update) {
        update(new UpdateRequest(update), 0);
    }

    /** @param size how many statements it changes; a large change may take longer */
    void update(UpdateRequest request, int size) {
        failures.told(() -> {
            try (RDFConnection connection = connection()) {
                connection
                        .newUpdate()
                        .update(request)
                        .timeout(patience.toMillis() + size, TimeUnit.MILLISECONDS)
                        .build()
                        .execute();
            }
        });
    }

    /** Adds triples to a graph. */
    void add(Node graph, Graph triples) {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        RDFDataMgr.write(lines, triples, RDFFormat.NTRIPLES_UTF8);
        HttpRequest request = HttpRequest.newBuilder(place(graph))
                .timeout(patience.plusMillis(triples.size()))
                .header("Content-Type", "application/n-triples")
                .POST(HttpRequest.BodyPublishers.ofByteArray(lines.toByteArray()))
                .build();
        HttpResponse<InputStream> answer = sent(request);
        try (InputStream in = answer.body()) {
            if (answer.statusCode() / 100 != SUCCESS) {
                throw failures.answered(answer.statusCode(), null);
            }
            in.skip(Long.MAX_VALUE);
        } catch (IOException e) {
            throw failures.broken(e);
        }
    }

    private URI place(Node graph) {
        return address.graph(
                Quad.isDefaultGraph(graph)
                        ? "default"
                        : "graph=" + URLEncoder.encode(graph.getURI(), StandardCharsets.UTF_8));
    }

    /** Fetches a graph as it comes over the line, so that it need not fit into memory. */
    void fetch(Node graph, StreamRDF into) {
        URI from = place(graph);
        HttpRequest request = HttpRequest.newBuilder(from)
                .timeout(patience)
                .header("Accept", LINES)
                .GET()
                .build();
        failures.told(() -> {
            HttpResponse<InputStream> answer = sent(request);
            try (Awaited in = new Awaited(answer.body(), patience)) {
                if (answer.statusCode() == GONE && !Quad.isDefaultGraph(graph)) {
                    return; // emptied since it was listed
                }
                if (answer.statusCode() / 100 != SUCCESS) {
                    throw failures.answered(answer.statusCode(), null);
                }
                Lang lang = RDFLanguages.contentTypeToLang(answer.headers()
                        .firstValue("Content-Type")
                        .orElse("")
                        .replaceAll(";.*", "")
                        .strip());
                parse(in, lang == null ? Lang.NTRIPLES : lang, from, into);
            } catch (IOException e) {
                throw failures.broken(e);
            }
        });
    }

    private void parse(Awaited in, Lang lang, URI from, StreamRDF into) {
        try {
            RDFParser.source(in)
                    .lang(lang)
                    .base(from.toString())
                    .errorHandler(ErrorHandlerFactory.errorHandlerStrictNoLogging)
                    .parse(into);
        } catch (RiotException | RuntimeIOException e) {
            // The reader takes a line that broke for the end of what it reads, and finds that badly written.
            IOException broke = in.broke();
            throw broke == null ? e : failures.broken(broke);
        }
    }

    private HttpResponse<InputStream> sent(HttpRequest request) {
        try {
            return http.send(request, HttpResponse.BodyHandlers.ofInputStream());
        } catch (IOException e) {
            throw failures.broken(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw failures.broken(e);
        }
    }

    private RDFConnection connection() {
        return RDFConnectionRemote.newBuilder()
                .queryEndpoint(address.query().toString())
                .updateEndpoint(address.update().toString())
                .gspEndpoint(address.data().toString())
                .httpClient(http)
                .build();
    }
}
