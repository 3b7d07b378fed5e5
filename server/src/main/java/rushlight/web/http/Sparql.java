package rushlight.web.http;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.compose.Union;
import org.apache.jena.query.ARQ;
import org.apache.jena.query.Dataset;
import org.apache.jena.query.DatasetFactory;
import org.apache.jena.query.Query;
import org.apache.jena.query.QueryCancelledException;
import org.apache.jena.query.QueryExecution;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.query.QueryParseException;
import org.apache.jena.query.ResultSetFormatter;
import org.apache.jena.query.Syntax;
import org.apache.jena.rdf.model.Model;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFDataMgr;
import org.apache.jena.riot.resultset.ResultSetLang;
import org.apache.jena.shared.JenaException;
import rushlight.archive.Archive;

/**
 * Answers SPARQL queries over film and book: with a time limit, a limit on what comes back, and nothing that reaches
 * out to other servers or into the program.
 */
final class Sparql {
    private static final long SECONDS = 10;
    private static final int LONGEST_QUERY = 20_000;

    /** Rows that are sorted or told apart in memory; more of them go to the disk. */
    private static final long HELD_IN_MEMORY = 50_000;

    private static final int LONGEST_ANSWER = 32 << 20;
    private static final String JSON = "application/sparql-results+json";
    private static final String XML = "application/sparql-results+xml";
    private static final String CSV = "text/csv";
    private static final String TSV = "text/tab-separated-values";
    private static final String TURTLE = "text/turtle";
    private static final String JSON_LD = "application/ld+json";
    private static final Map<String, Lang> ROWS = Map.of(
            JSON,
            ResultSetLang.RS_JSON,
            XML,
            ResultSetLang.RS_XML,
            CSV,
            ResultSetLang.RS_CSV,
            TSV,
            ResultSetLang.RS_TSV);

    private final Archive archive;

    Sparql(Archive archive) {
        this.archive = archive;
    }

    void answer(Context ctx, String text) {
        Query query = parsed(text);
        boolean isGraph = query.isConstructType() || query.isDescribeType();
        List<String> forms = isGraph
                ? List.of(TURTLE, JSON_LD)
                : query.isAskType() ? List.of(JSON, XML) : List.of(JSON, XML, CSV, TSV);
        String form = Accepts.best(ctx, forms);
        byte[] answer = archive.store().ask(film -> run(film, query, form));
        ctx.header("Cache-Control", "no-store")
                .header("Vary", "Accept")
                .contentType(form)
                .result(answer);
    }

    private static Query parsed(String text) {
        if (text.length() > LONGEST_QUERY) {
            throw Problem.of(413, "The question is longer than " + LONGEST_QUERY + " characters.")
                    .thrown();
        }
        try {
            Query query = QueryFactory.create(text, Syntax.syntaxSPARQL_11);
            if (query.hasDatasetDescription()) {
                throw Problem.of(400, "There is one graph here, film and book together; leave FROM out.")
                        .thrown();
            }
            Reaching.in(query).ifPresent(what -> {
                throw Problem.of(400, what).thrown();
            });
            return query;
        } catch (QueryParseException e) {
            throw Problem.of(400, "Not SPARQL 1.1: " + firstLine(e)).thrown();
        } catch (JenaException e) {
            throw Problem.of(400, "The question cannot be read: " + firstLine(e))
                    .thrown();
        }
    }

    private byte[] run(Dataset film, Query query, String form) {
        Graph all = new Union(
                film.asDatasetGraph().getDefaultGraph(),
                archive.book().ontology().graph());
        Model model = ModelFactory.createModelForGraph(all);
        Limited out = new Limited();
        try (QueryExecution execution = QueryExecution.dataset(DatasetFactory.wrap(model))
                .query(query)
                .timeout(SECONDS, TimeUnit.SECONDS)
                .set(ARQ.spillToDiskThreshold, HELD_IN_MEMORY)
                .build()) {
            if (query.isAskType()) {
                ResultSetFormatter.output(out, execution.execAsk(), ROWS.getOrDefault(form, ResultSetLang.RS_JSON));
            } else if (query.isSelectType()) {
                ResultSetFormatter.output(out, execution.execSelect(), ROWS.getOrDefault(form, ResultSetLang.RS_JSON));
            } else {
                Model answer = query.isDescribeType() ? execution.execDescribe() : execution.execConstruct();
                RDFDataMgr.write(out, answer, form.equals(JSON_LD) ? Lang.JSONLD : Lang.TURTLE);
            }
            return out.bytes();
        } catch (QueryCancelledException e) {
            throw Problem.of(503, "The question took longer than " + SECONDS + " seconds. Ask for less, or add LIMIT.")
                    .thrown();
        }
    }

    private static String firstLine(Exception e) {
        String message = e.getMessage();
        return message == null
                ? "it does not say why."
                : message.lines().findFirst().orElse("");
    }

    /** Holds an answer, up to a length. */
    private static final class Limited extends OutputStream {
        private final ByteArrayOutputStream held = new ByteArrayOutputStream();

        @Override
        public void write(int one) {
            check(1);
            held.write(one);
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            check(length);
            held.write(bytes, from, length);
        }

        private void check(int more) {
            if (held.size() + more > LONGEST_ANSWER) {
                throw Problem.of(413, "The answer is longer than " + (LONGEST_ANSWER >> 20) + " MB; add LIMIT.")
                        .thrown();
            }
        }

        byte[] bytes() {
            return held.toByteArray();
        }
    }
}
