package rushlight.web.http;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;

/** Watches every request: gives it a name, measures it and has it logged, by its route and never by its address. */
final class Watching {
    private static final String ID = "X-Request-Id";

    /** The name that a proxy gave a request is kept where it can be no word. */
    private static final Pattern GIVEN = Pattern.compile("[0-9a-fA-F-]{8,64}");

    private static final int ID_BYTES = 8;
    private static final double NANOS_A_MILLI = 1e6;

    private final List<Route> routes;
    private final Meters meters;
    private final ServerLog log;
    private final SecureRandom random = new SecureRandom();

    Watching(List<Route> routes, Meters meters, ServerLog log) {
        this.routes = List.copyOf(routes);
        this.meters = meters;
        this.log = log;
    }

    /** Sees every request first; to be called before anything else looks at requests. */
    void begin(JavalinConfig config) {
        config.routes.before(this::name);
        config.jetty.modifyServer(jetty -> jetty.setRequestLog(this::answered));
    }

    /** Something broke while a request was answered; gives the name it is logged under. */
    String broke(Context ctx, Exception why) {
        String id = Optional.ofNullable(ctx.res().getHeader(ID)).orElse("");
        log.broke(route(ctx.method().name(), ctx.path()), id, why);
        return id;
    }

    private void name(Context ctx) {
        String given = ctx.header(ID);
        if (given != null && GIVEN.matcher(given).matches()) {
            ctx.header(ID, given);
            return;
        }
        byte[] bytes = new byte[ID_BYTES];
        random.nextBytes(bytes);
        ctx.header(ID, HexFormat.of().formatHex(bytes));
    }

    private void answered(Request request, Response response) {
        String address =
                Optional.ofNullable(request.getHttpURI().getCanonicalPath()).orElse("");
        ServerLog.Answered answered = new ServerLog.Answered(
                request.getMethod(),
                route(request.getMethod(), address),
                response.getStatus(),
                (System.nanoTime() - request.getBeginNanoTime()) / NANOS_A_MILLI,
                Math.max(0, Response.getContentBytesWritten(response)),
                Optional.ofNullable(response.getHeaders().get(ID)).orElse(""));
        meters.answered(answered);
        log.answered(answered);
    }

    /** The route of an address as it is described: what is none is a page, a file of the client, or nothing. */
    private String route(String method, String address) {
        Optional<String> route = routes.stream()
                .filter(r -> r.method().name().equals(method) || method.equals("HEAD"))
                .filter(r -> r.matches(address))
                .map(Route::path)
                .findFirst();
        return route.orElse(method.equals("GET") || method.equals("HEAD") ? "(page)" : "(none)");
    }
}
