package rushlight.web.http;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jetty.server.handler.GracefulHandler;
import rushlight.archive.Archive;
import rushlight.archive.FolderException;

/** The running server. Without accounts it answers to this machine alone; with them, to those who have one. */
public final class Server implements AutoCloseable {
    /** How long running requests and imports may take to end once the server is to stop. */
    public static final Duration STOPS_WITHIN = Duration.ofSeconds(60);

    private static final long LONGEST_REQUEST = 1L << 20;
    private static final List<String> NO_PAGES = List.of("/api", "/id", "/sparql", "/clips");

    private final Javalin javalin;
    private final List<Space> spaces;
    private final Meters meters;
    private final boolean https;

    private Server(Javalin javalin, List<Space> spaces, Meters meters, boolean https) {
        this.javalin = javalin;
        this.spaces = spaces;
        this.meters = meters;
        this.https = https;
    }

    /**
     * Starts answering to this machine alone, without accounts.
     *
     * @param archive the film; it stays open when the server is closed
     * @param port where to listen; 0 takes any free one
     * @param demo whether this is the invented league
     */
    public static Server start(Archive archive, int port, boolean demo) {
        return start(Serving.here(archive, port, demo), ServerLog.quiet());
    }

    /** Starts answering, without a line for each request. */
    public static Server start(Serving serving) {
        return start(serving, ServerLog.quiet());
    }

    /**
     * Starts answering.
     *
     * @param log where each request is told
     * @throws FolderException where it must not be served like this, or the port is taken
     */
    public static Server start(Serving serving, ServerLog log) {
        serving.refusal().ifPresent(why -> {
            throw new FolderException(why);
        });
        Caller caller = new Caller(serving.certificate().isPresent(), serving.behindProxy());
        Door door = new Door(serving, caller);
        Meters meters = new Meters();
        List<Space> spaces = serving.spaces().stream()
                .map(team -> space(team, serving, door, meters, log))
                .toList();
        Watching watching = new Watching(spaces.get(0).routes(), meters, log);
        Problems problems = new Problems(spaces.get(0).routes(), watching);
        Pages pages = Pages.packed();
        Guard guard = new Guard(caller, !serving.isHere() || serving.behindProxy());
        Gates gates = new Gates(door, Rules.described(), spaces);
        Javalin javalin = Javalin.create(config -> {
            settings(config);
            watching.begin(config);
            serving.certificate().ifPresent(certificate -> Https.speak(config, serving, certificate));
            problems.handle(config.routes);
            config.routes.before(guard::before);
            gates.open(config.routes);
            config.routes.get("/*", ctx -> page(ctx, pages, problems));
        });
        try {
            return new Server(
                    javalin.start(serving.bind(), serving.port()),
                    spaces,
                    meters,
                    serving.certificate().isPresent());
        } catch (JavalinException e) {
            spaces.forEach(space -> space.jobs().close());
            meters.close();
            if (!(e instanceof JavalinBindException)) {
                throw Https.unopened(serving, e);
            }
            throw new FolderException(
                    "Port " + serving.port() + " at " + serving.bind()
                            + " cannot be had: another rushlight serve may hold it. Choose another with --port.",
                    e);
        }
    }

    private static Space space(Serving.Team team, Serving serving, Door door, Meters meters, ServerLog log) {
        meters.film(team.archive(), serving.spaces().size() == 1 ? "" : team.name());
        Jobs jobs = new Jobs(log);
        List<Route> routes = new ArrayList<>(routes(team.archive(), serving.demo(), jobs, meters));
        routes.addAll(new SessionRoutes(door).routes());
        return new Space(team.name(), jobs, routes);
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
        Planning planning = new Planning(archive, version);
        routes.addAll(new PlanRoutes(archive, planning, jobs).routes());
        routes.addAll(new KeptPlanRoutes(archive, planning).routes());
        routes.addAll(new ProgressRoutes(archive, version, film).routes());
        routes.addAll(new RepRoutes(archive, version).routes());
        routes.addAll(new ChangeRoutes(archive, version).routes());
        routes.addAll(new CrossCheckRoutes(archive, version).routes());
        routes.addAll(new ImportRoutes(archive, jobs, meters).routes());
        routes.addAll(new BackupRoutes(archive).routes());
        routes.addAll(new QuestionRoutes(archive).routes());
        routes.addAll(new AskRoutes(archive, version).routes());
        routes.addAll(new NotesRoutes(archive).routes());
        routes.addAll(new DecisionRoutes(archive).routes());
        routes.addAll(new LearnedRoutes(archive).routes());
        routes.addAll(new OpinionRoutes(archive).routes());
        routes.addAll(new ProjectionRoutes(archive).routes());
        routes.addAll(new GraphRoutes(archive).routes());
        routes.addAll(Clips.packed().routes());
        return routes;
    }

    /** Where to point a browser. */
    public String address() {
        return (https ? "https" : "http") + "://localhost:" + port() + "/";
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    /** Takes no more requests, lets those that run and imports that were begun end, and stops. */
    @Override
    public void close() {
        javalin.stop();
        spaces.forEach(space -> space.jobs().close());
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
