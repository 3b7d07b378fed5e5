package rushlight.web.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.accounts.AccountsException;
import rushlight.archive.FolderException;
import rushlight.web.Json;

/** Turns everything that ends a request early into problem details; nobody is shown a stack trace. */
final class Problems {
    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

    private final List<Route> routes;

    Problems(List<Route> routes) {
        this.routes = List.copyOf(routes);
    }

    void handle(RoutesConfig config) {
        config.exception(ProblemException.class, (e, ctx) -> send(ctx, e.problem()));
        config.exception(HttpResponseException.class, (e, ctx) -> send(ctx, of(e, ctx)));
        config.exception(AccountsException.class, (e, ctx) -> send(ctx, closed(e)));
        config.exception(FolderException.class, (e, ctx) -> send(ctx, broken(ctx, e)));
        config.exception(Exception.class, (e, ctx) -> send(ctx, broken(ctx, e)));
    }

    /** Nothing answers here: say whether something would in another way. */
    Problem nowhere(Context ctx) {
        String allowed = routes.stream()
                .filter(route -> route.matches(ctx.path()))
                .map(route -> route.method().name())
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        if (allowed.isEmpty()) {
            return Problem.of(404, "Nothing answers at this address.");
        }
        ctx.header("Allow", allowed);
        return Problem.of(405, "This address answers to " + allowed + ".");
    }

    private Problem of(HttpResponseException e, Context ctx) {
        return switch (e.getStatus()) {
            case 404, 405 -> nowhere(ctx);
            case 413 -> Problem.of(413, "The request is longer than this server takes.");
            default -> Problem.of(e.getStatus(), sentence(e.getStatus()));
        };
    }

    private static Problem closed(AccountsException e) {
        LOG.error("The accounts cannot be used: {}", e.getMessage());
        return Problem.of(503, "The accounts cannot be read, so nobody is let in. The program's log says why.");
    }

    private static Problem broken(Context ctx, Exception e) {
        LOG.error("{} {} broke", ctx.method(), ctx.path(), e);
        return Problem.of(500, "Something broke; nothing was half stored. The program's log says where.");
    }

    private static String sentence(int status) {
        return status < 500 || status == 501 || status == 505 ? "The request cannot be read as it stands." : "Something broke.";
    }

    private static void send(Context ctx, Problem problem) {
        ctx.status(problem.status())
                .header("Cache-Control", "no-store")
                .removeHeader("ETag")
                .contentType(Problem.MEDIA_TYPE)
                .result(Json.compact(problem));
    }

    /** What the HTTP engine itself refuses, before any route is looked for. */
    static final class Engine extends ErrorHandler {
        @Override
        public boolean handle(Request request, Response response, Callback callback) {
            int status = response.getStatus() < 400 ? 500 : response.getStatus();
            Problem problem = Problem.of(status, sentence(status));
            response.setStatus(status);
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
            response.getHeaders().put("X-Content-Type-Options", "nosniff");
            Content.Sink.write(response, true, Json.compact(problem), callback);
            return true;
        }
    }
}
