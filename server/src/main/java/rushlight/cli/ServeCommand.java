package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rushlight.archive.DemoLeague;
import rushlight.web.http.Server;

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
            "  rushlight serve --teams /srv/film --behind-proxy"
        })
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description =
                    "the data folder (as everywhere: ~/.rushlight or $RUSHLIGHT_DATA; with --demo ~/.rushlight-demo)")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--port", paramLabel = "NUMBER", defaultValue = "7070", description = "where to listen (7070)")
    private int port;

    @Mixin
    private ServeOptions others = new ServeOptions();

    @Option(names = "--demo", description = "show the invented league")
    private boolean demo;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new ParameterException(spec.commandLine(), "A port is a number from 0 to " + HIGHEST_PORT + ".");
        }
        if (others.isOfTeams() && (demo || folder.isPresent())) {
            throw new ParameterException(
                    spec.commandLine(), "--teams names the folders of all teams; leave --data and --demo out.");
        }
        others.refusal(where()).ifPresent(why -> {
            throw new ParameterException(spec.commandLine(), why);
        });
        CountDownLatch stop = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        Thread end = new Thread(() -> {
            stop.countDown();
            await(stopped);
        });
        try (Archives archives = others.open(where())) {
            if (demo) {
                archives.teams().forEach(team -> DemoLeague.into(team.archive()));
            }
            try (Server server = Server.start(others.serving(archives, where(), port, demo))) {
                Runtime.getRuntime().addShutdownHook(end);
                say(server);
                stop.await();
            }
        } finally {
            stopped.countDown();
        }
        return 0;
    }

    private void say(Server server) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                "Rushlight shows " + (demo ? "an invented league" : others.shown(where())) + " at " + server.address());
        out.println("Press Ctrl-C to stop.");
        out.flush();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
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
