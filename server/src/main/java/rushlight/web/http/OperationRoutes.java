package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import rushlight.archive.Archive;

/** What those who run the server ask of it: whether it lives, whether it can work, and how it fares. */
final class OperationRoutes {
    private final Archive archive;
    private final Meters meters;

    OperationRoutes(Archive archive, Meters meters) {
        this.archive = archive;
        this.meters = meters;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/health", OperationRoutes::health),
                Route.get("/ready", this::ready),
                Route.get("/metrics", this::metrics));
    }

    /** It answers, whatever may be wrong with the film: a reason not to start it again. */
    private static void health(Context ctx) {
        ctx.header("Cache-Control", "no-store");
        Versions.json(ctx, Map.of("status", "up"));
    }

    /** The film can be read, and the index has all of it: a reason to send people here. */
    private void ready(Context ctx) {
        ctx.header("Cache-Control", "no-store");
        long lag = archive.lag();
        if (lag != 0) {
            throw Problem.of(
                            503,
                            "The index lacks " + lag + (lag == 1 ? " change" : " changes")
                                    + " of the film. If that lasts, stop the server and start it again: it catches up.")
                    .thrown();
        }
        Versions.json(ctx, Map.of("status", "ready"));
    }

    private void metrics(Context ctx) {
        ctx.header("Cache-Control", "no-store");
        ctx.contentType(Meters.TEXT).result(meters.text(archive));
    }
}
