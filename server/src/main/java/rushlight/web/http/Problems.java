package rushlight.web.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.EofException;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.accounts.AccountsException;
import rushlight.archive.FolderException;
import rushlight.archive.IndexBehindException;
import rushlight.store.FullDiskException;
import rushlight.store.RemoteStoreException;
import rushlight.web.Json;

/** Turns everything that ends a request early into problem details; nobody is shown a stack trace. */
final class Problems {
    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);

    private final List<Route> routes;
    private final Watching watching;

    Problems(List<Route> routes, Watching watching) {
        this.routes = List.copyOf(routes);
        this.watching = watching;
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

    private Problem broken(Context ctx, Exception e) {
        Optional<Problem> told = unheard(e).or(() -> elsewhere(e));
        if (told.isPresent()) {
            return told.get();
        }
        String request = watching.broke(ctx, e);
        return unwritable(e)
                .orElseGet(() -> Problem.of(
                        500,
                        "Something broke; nothing was half stored. The program's log says where, under request "
                                + request + "."));
    }

    /** What came over the line and was no request, or ended before its end; empty where something else broke. */
    private static Optional<Problem> unheard(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof HttpException refused && refused.getCode() / 100 == 4) {
                return Optional.of(Problem.of(refused.getCode(), sentence(refused.getCode())));
            }
            if (cause instanceof EofException) {
                return Optional.of(Problem.of(400, "The request broke off before its end. Nothing was kept of it."));
            }
        }
        return Optional.empty();
    }

    /** What could not be written, and what became of it; empty where something else broke. */
    static Optional<Problem> unwritable(Exception e) {
        Optional<Problem> store = elsewhere(e);
        if (store.isPresent()) {
            return store;
        }
        if (e instanceof FullDiskException || e instanceof IndexBehindException) {
            return Optional.of(Problem.of(507, String.valueOf(e.getMessage())));
        }
        return FullDiskException.isBehind(e)
                ? Optional.of(Problem.of(507, "The disk is full. Nothing was half stored. Make room and do it again."))
                : Optional.empty();
    }

    /** Why the store on another machine did not take a change; the film can be read all the same. */
    private static Optional<Problem> elsewhere(Exception e) {
        return e instanceof RemoteStoreException store
                ? Optional.of(Problem.of(isOvertaken(store.kind()) ? 409 : 503, String.valueOf(e.getMessage())))
                : Optional.empty();
    }

    private static boolean isOvertaken(RemoteStoreException.Kind kind) {
        return kind == RemoteStoreException.Kind.STALE || kind == RemoteStoreException.Kind.OVERTAKEN;
    }

    private static String sentence(int status) {
        return status < 500 || status == 501 || status == 505
                ? "The request cannot be read as it stands."
                : "Something broke.";
    }

    /** A refusal is shown where the answer was wanted, which may be a frame of a page of this program. */
    private static void send(Context ctx, Problem problem) {
        ctx.status(problem.status())
                .header("Content-Security-Policy", StyledPage.BARE)
                .header("Cache-Control", "no-store")
                .removeHeader("ETag")
                .contentType(Problem.MEDIA_TYPE)
                .result(Json.compact(problem));
    }

    /** What the HTTP engine itself refuses, before any route is looked for. */
    static final class Engine extends ErrorHandler {
        private static final int STOPPING = 503;
        private static final String STOPPED = "The server is being stopped. Ask again when it is back.";

        @Override
        public boolean handle(Request request, Response response, Callback callback) {
            int status = response.getStatus() < 400 ? 500 : response.getStatus();
            Problem problem = Problem.of(status, status == STOPPING ? STOPPED : sentence(status));
            response.setStatus(status);
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
            response.getHeaders().put("X-Content-Type-Options", "nosniff");
            Content.Sink.write(response, true, Json.compact(problem), callback);
            return true;
        }
    }
}
