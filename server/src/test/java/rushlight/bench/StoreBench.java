package rushlight.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.jena.fuseki.main.FusekiServer;
import org.apache.jena.tdb2.DatabaseMgr;
import rushlight.archive.Archive;
import rushlight.archive.DemoLeague;
import rushlight.archive.KeptAt;
import rushlight.film.Log;

/**
 * Times the same work in a folder alone and in one whose film is kept in a store elsewhere: a Fuseki over TDB2 on the disk, in the
 * same program, so that the two share the processors and nothing is lost on a line.
 */
public final class StoreBench {
    private static final int REPS_EACH = 300;
    private static final int EDITS = 3;

    private final Season season;
    private final Path home;

    private StoreBench(Season season, Path home) {
        this.season = season;
        this.home = home;
    }

    /** Arguments: how many reps to import (3000 and 30000). */
    public static void main(String[] args) throws IOException {
        List<Integer> sizes = args.length == 0
                ? List.of(3_000, 30_000)
                : List.of(args).stream().map(Integer::valueOf).toList();
        Path home = Files.createTempDirectory("store-bench");
        StoreBench bench;
        try (Archive demo = Archive.open(home.resolve("demo"))) {
            DemoLeague.into(demo);
            bench = new StoreBench(new Season(demo.logs()), home);
        }
        bench.warmUp();
        System.out.println("| reps | what | folder alone | kept elsewhere | ratio |\n|---|---|---|---|---|");
        for (int size : sizes) {
            bench.measure(size);
        }
    }

    private void warmUp() throws IOException {
        List<Log> logs = season.of(0, 5, REPS_EACH);
        try (Archive alone = Archive.open(home.resolve("warm-alone"))) {
            alone.put(logs, false);
        }
        FusekiServer server = served("warm");
        try (Archive kept = Archive.open(home.resolve("warm-kept"), place(server))) {
            kept.put(logs, false);
        } finally {
            server.stop();
        }
    }

    private void measure(int reps) throws IOException {
        List<Log> logs = season.of(1, reps / REPS_EACH, REPS_EACH);
        double alone;
        AfterEdits editsAlone;
        try (Archive archive = Archive.open(home.resolve("alone-" + reps))) {
            alone = seconds(() -> archive.put(logs, false));
            editsAlone = AfterEdits.of(archive, logs.get(0), EDITS);
        }
        FusekiServer server = served("store-" + reps);
        try (Archive archive = Archive.open(home.resolve("kept-" + reps), place(server))) {
            both(reps, "import", alone, seconds(() -> archive.put(logs, false)));
            AfterEdits edits = AfterEdits.of(archive, logs.get(0), EDITS);
            both(reps, "one edit", editsAlone.edit() / 1e3, edits.edit() / 1e3);
            fetch(reps, archive, server);
        } finally {
            server.stop();
        }
    }

    private void fetch(int reps, Archive archive, FusekiServer server) {
        long start = System.nanoTime();
        try (Archive second = Archive.open(home.resolve("second-" + reps), place(server))) {
            only(reps, "a second folder fetches everything", since(start));
            archive.edits().undo(Optional.empty());
            only(
                    reps,
                    "the second folder fetches one edit",
                    seconds(() -> second.following().catchUp()));
            only(
                    reps,
                    "the second folder looks, and nothing was changed",
                    seconds(() -> second.following().catchUp()));
        }
    }

    private FusekiServer served(String name) throws IOException {
        Path place = Files.createDirectories(home.resolve(name));
        return FusekiServer.create()
                .loopback(true)
                .port(0)
                .add("/film", DatabaseMgr.connectDatasetGraph(place.toString()))
                .build()
                .start();
    }

    private static KeptAt place(FusekiServer server) {
        return KeptAt.of(Optional.of("http://localhost:" + server.getPort() + "/film"), Optional.empty());
    }

    private static double seconds(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return since(start);
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static void both(int reps, String what, double alone, double kept) {
        System.out.printf(
                Locale.ROOT, "| %,d | %s | %.2f s | %.2f s | %.1f |%n", reps, what, alone, kept, kept / alone);
    }

    private static void only(int reps, String what, double kept) {
        System.out.printf(Locale.ROOT, "| %,d | %s | | %.2f s | |%n", reps, what, kept);
    }
}
