package rushlight.web.http;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jetty.server.handler.GracefulHandler;
import rushlight.archive.Archive;
import rushlight.archive.FolderException;

/** The running server. It answers to this machine alone; there are no accounts, so nobody else may come in. */
public final class Server implements AutoCloseable {
    /** How long running requests and imports may take to end once the server is to stop. */
    public static final Duration STOPS_WITHIN = Duration.ofSeconds(60);

    private static final String HERE = "127.0.0.1";
    private static final long LONGEST_REQUEST = 1L << 20;
    private static final List<String> NO_PAGES = List.of("/api", "/id", "/sparql", "/clips");

    private final Javalin javalin;
    private final Jobs jobs;
    private final Meters meters;

    private Server(Javalin javalin, Jobs jobs, Meters meters) {
        this.javalin = javalin;
        this.jobs = jobs;
        this.meters = meters;
    }

    /**
     * Starts answering, without a line for each request.
     *
     * @param archive the film; it stays open when the server is closed
     * @param port where to listen; 0 takes any free one
     * @param demo whether this is the invented league
     */
    public static Server start(Archive archive, int port, boolean demo) {
        return start(archive, port, demo, ServerLog.quiet());
    }

    /**
     * Starts answering.
     *
     * @param archive the film; it stays open when the server is closed
     * @param port where to listen; 0 takes any free one
     * @param demo whether this is the invented league
     * @param log where each request is told
     */
    public static Server start(Archive archive, int port, boolean demo, ServerLog log) {
        Jobs jobs = new Jobs(log);
        Meters meters = new Meters();
        meters.film(archive, "");
        List<Route> routes = routes(archive, demo, jobs, meters);
        Watching watching = new Watching(routes, meters, log);
        Problems problems = new Problems(routes, watching);
        Pages pages = Pages.packed();
        Javalin javalin = Javalin.create(config -> {
            settings(config);
            watching.begin(config);
            problems.handle(config.routes);
            config.routes.before(Guard::before);
            routes.forEach(route -> config.routes.addHttpHandler(route.method(), route.path(), route.handler()));
            config.routes.get("/*", ctx -> page(ctx, pages, problems));
        });
        try {
            return new Server(javalin.start(HERE, port), jobs, meters);
        } catch (JavalinBindException e) {
            jobs.close();
            meters.close();
            throw new FolderException(
                    "Port " + port + " is taken, by another rushlight serve perhaps. Choose another with --port.", e);
        }
    }

    /** Everything it answers to, beside the pages. */
    static List<Route> routes(Archive archive, boolean demo, Jobs jobs, Meters meters) {
        FilmVersion version = new FilmVersion(archive);
        List<Route> routes = new ArrayList<>();
        routes.addAll(new ProgramRoutes(archive, demo).routes());
        routes.addAll(new OperationRoutes(archive, meters).routes());
        BookRoutes book = new BookRoutes(archive, version);
        routes.addAll(book.routes());
        routes.addAll(new HandbookRoutes(archive, version, book::known).routes());
        FilmRoutes film = new FilmRoutes(archive, version);
        routes.addAll(film.routes());
        routes.addAll(new FigureRoutes(archive, version, film).routes());
        routes.addAll(new ReportRoutes(archive, version).routes());
        routes.addAll(new ProgressRoutes(archive, version, film).routes());
        routes.addAll(new RepRoutes(archive, version).routes());
        routes.addAll(new ChangeRoutes(archive, version).routes());
        routes.addAll(new CrossCheckRoutes(archive, version).routes());
        routes.addAll(new ImportRoutes(archive, jobs, meters).routes());
        routes.addAll(new QuestionRoutes(archive).routes());
        routes.addAll(new AskRoutes(archive, version).routes());
        routes.addAll(new NotesRoutes(archive).routes());
        routes.addAll(new DecisionRoutes(archive).routes());
        routes.addAll(new OpinionRoutes(archive).routes());
        routes.addAll(new ProjectionRoutes(archive).routes());
        routes.addAll(new GraphRoutes(archive).routes());
        routes.addAll(Clips.packed().routes());
        return routes;
    }

    /** Where to point a browser. */
    public String address() {
        return "http://localhost:" + port() + "/";
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    /** Takes no more requests, lets those that run and imports that were begun end, and stops. */
    @Override
    public void close() {
        javalin.stop();
        jobs.close();
        meters.close();
    }

    private static void settings(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LONGEST_REQUEST;
        config.http.defaultContentType = "application/json";
        config.jetty.modifyServer(jetty -> {
            jetty.setErrorHandler(new Problems.Engine());
            jetty.setStopTimeout(STOPS_WITHIN.toMillis());
            jetty.setHandler(new GracefulHandler());
        });
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendDateHeader(true);
        });
    }

    private static void page(Context ctx, Pages pages, Problems problems) {
        boolean isNoPage = NO_PAGES.stream()
                .anyMatch(start -> ctx.path().equals(start) || ctx.path().startsWith(start + "/"));
        if (isNoPage || !pages.send(ctx)) {
            throw problems.nowhere(ctx).thrown();
        }
    }
}
