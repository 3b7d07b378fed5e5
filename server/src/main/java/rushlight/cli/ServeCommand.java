package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rushlight.archive.Book;
import rushlight.archive.DemoLeague;
import rushlight.web.http.Server;
import rushlight.web.http.ServerLog;

/** Shows the data folder in a browser. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = {
            "Shows your data folder in a browser, until you press Ctrl-C.",
            "",
            "Without accounts it answers to this machine alone, and whoever sits at it may read and change everything."
                    + " With accounts (rushlight user add) everybody signs in, and it may be bound to the network: with"
                    + " a certificate, or behind a proxy that speaks HTTPS.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight serve                  your data folder, at http://localhost:7070/",
            "  rushlight serve --demo           an invented league to look around in",
            "  rushlight serve --port 8080      at another port; 0 takes any free one",
            "  rushlight serve --bind 0.0.0.0 --certificate film.p12",
            "  rushlight serve --teams /srv/film --behind-proxy",
            "  rushlight serve --log json       a line for each request, for programs to read"
        })
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    /** Requests first, then imports, then the folder is closed. */
    private static final Duration LONGEST_STOP =
            Server.STOPS_WITHIN.multipliedBy(2).plusSeconds(5);

    @Option(
            names = "--data",
            paramLabel = "DIR",
            converter = Folder.class,
            description =
                    "the data folder (as everywhere: ~/.rushlight or $RUSHLIGHT_DATA; with --demo ~/.rushlight-demo)")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--port", paramLabel = "NUMBER", defaultValue = "7070", description = "where to listen (7070)")
    private int port;

    @Mixin
    private ServeOptions others = new ServeOptions();

    @Option(names = "--demo", description = "show the invented league")
    private boolean demo;

    @Option(
            names = "--log",
            paramLabel = "FORM",
            description = "tell each request in a line of text or json on standard error, without names of people")
    private Optional<ServerLog.Form> form = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new ParameterException(spec.commandLine(), "A port is a number from 0 to " + HIGHEST_PORT + ".");
        }
        if (others.isOfTeams() && (demo || folder.isPresent() || others.isKept())) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--teams names the folders of all teams; leave --data, --demo and --store out. Each folder"
                            + " remembers its own store.");
        }
        others.refusal(where()).ifPresent(why -> {
            throw new ParameterException(spec.commandLine(), why);
        });
        CountDownLatch stop = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        Thread end = new Thread(() -> {
            stop.countDown();
            await(stopped, spec.commandLine().getErr());
        });
        ServerLog log = log();
        try (Archives archives = others.open(where(), spec.commandLine().getErr())) {
            if (demo) {
                archives.teams().forEach(team -> DemoLeague.into(team.archive()));
            }
            try (Server server = Server.start(others.serving(archives, where(), port, demo), log)) {
                archives.teams().forEach(team -> team.archive().shownAt(server.address()));
                Runtime.getRuntime().addShutdownHook(end);
                say(server);
                archives.teams()
                        .forEach(team -> Ahead.begin(() -> ready(team.archive().book())));
                log.say("started");
                stop.await();
                log.say("stopping");
            }
        } finally {
            log.say("stopped");
            stopped.countDown();
        }
        return 0;
    }

    /** Makes what the first question would have to wait for. */
    private static void ready(Book book) {
        book.questions();
        book.asker();
    }

    private ServerLog log() {
        PrintWriter err = spec.commandLine().getErr();
        return form.map(how -> ServerLog.of(how, line -> {
                    err.println(line);
                    err.flush();
                }))
                .orElseGet(ServerLog::quiet);
    }

    private void say(Server server) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                "Rushlight shows " + (demo ? "an invented league" : others.shown(where())) + " at " + server.address());
        out.println("Press Ctrl-C to stop.");
        out.flush();
    }

    private static void await(CountDownLatch latch, PrintWriter err) {
        try {
            if (!latch.await(LONGEST_STOP.toSeconds(), TimeUnit.SECONDS)) {
                err.println("Stopped before all work was done; of a change that was not finished, nothing is kept.");
                err.flush();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Path where() {
        if (folder.isPresent()) {
            return folder.get();
        }
        return demo ? Path.of(System.getProperty("user.home")).resolve(".rushlight-demo") : DataFolder.usual();
    }
}
