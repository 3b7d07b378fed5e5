package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.apache.jena.graph.Graph;
import org.apache.jena.riot.Lang;
import rushlight.archive.Archive;
import rushlight.knowledge.Rl;
import rushlight.web.Addresses;

/** The book and the film as linked data. */
final class GraphRoutes {
    private static final String HTML = "text/html";
    private static final String HOW_TO_ASK = "/programs#sparql";
    private static final String TURTLE = "text/turtle";
    private static final String JSON_LD = "application/ld+json";
    private static final Map<String, Lang> FORMS = Map.of(TURTLE, Lang.TURTLE, JSON_LD, Lang.JSONLD);

    private final Archive archive;
    private final Sparql sparql;

    GraphRoutes(Archive archive) {
        this.archive = archive;
        this.sparql = new Sparql(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/id/{slug}", this::concept),
                Route.get("/sparql", this::ask),
                Route.post("/sparql", this::askByPost));
    }

    /** A browser is sent to the page, a program gets the triples. */
    private void concept(Context ctx) {
        String slug = ctx.pathParam("slug");
        Graph described = Described.of(archive.book().ontology().graph(), Rl.concept(slug));
        if (described.isEmpty()) {
            throw Problem.of(404, "The book has no \"" + slug + "\".").thrown();
        }
        ctx.header("Vary", "Accept");
        String form = Accepts.best(ctx, List.of(TURTLE, JSON_LD, HTML));
        if (form.equals(HTML)) {
            ctx.status(303).header("Location", "/technique/" + Addresses.part(slug));
            return;
        }
        ctx.contentType(form).result(Described.written(described, FORMS.getOrDefault(form, Lang.TURTLE)));
    }

    /** A browser that asks nothing is sent to the page that says how to ask. */
    private void ask(Context ctx) {
        refuseGraphs(ctx.queryParams("default-graph-uri"), ctx.queryParams("named-graph-uri"));
        String query = ctx.queryParam("query");
        if (query == null) {
            ctx.header("Vary", "Accept");
            if (Accepts.names(ctx, HTML)) {
                ctx.status(303).header("Location", HOW_TO_ASK);
                return;
            }
            throw Problem.of(400, "Send the question as query=.").thrown();
        }
        sparql.answer(ctx, query);
    }

    private void askByPost(Context ctx) {
        String type = Body.mediaType(ctx);
        if (type.equals("application/sparql-query")) {
            sparql.answer(ctx, ctx.body());
        } else if (type.equals("application/x-www-form-urlencoded")) {
            refuseGraphs(ctx.formParams("default-graph-uri"), ctx.formParams("named-graph-uri"));
            String query = ctx.formParam("query");
            if (query == null) {
                String why = ctx.formParam("update") == null
                        ? "Send the question as query=."
                        : "Nothing can be changed by SPARQL; there is the API for that.";
                throw Problem.of(400, why).thrown();
            }
            sparql.answer(ctx, query);
        } else {
            throw Problem.of(415, "Send the question as application/sparql-query, or as a form with query=.")
                    .thrown();
        }
    }

    private static void refuseGraphs(List<String> defaults, List<String> named) {
        if (!defaults.isEmpty() || !named.isEmpty()) {
            throw Problem.of(400, "There is one graph here, film and book together; name no other.")
                    .thrown();
        }
    }
}
