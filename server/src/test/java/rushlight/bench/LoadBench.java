package rushlight.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import org.apache.commons.io.FileUtils;
import rushlight.archive.Archive;
import rushlight.archive.DemoLeague;
import rushlight.ask.Answers;

/** Times a server with many people at once on the demo league, and sees that nothing they were told is kept got lost. */
public final class LoadBench {
    private static final int THINK_MILLIS = 1_000;

    private LoadBench() {}

    public static void main(String[] args) throws Exception {
        int clients = args.length > 0 ? Integer.parseInt(args[0]) : 50;
        int seconds = args.length > 1 ? Integer.parseInt(args[1]) : 120;
        int think = args.length > 2 ? Integer.parseInt(args[2]) : THINK_MILLIS;
        Path folder = Files.createTempDirectory("rushlight-load");
        Load.Result result;
        try (Archive archive = Archive.open(folder)) {
            DemoLeague.into(archive);
            archive.watch(
                    footage -> archive.book().answer(footage, "who wins with the long arm", Answers.Window.first(10)));
            result = new Load(archive, Duration.ofMillis(think)).run(clients, Duration.ofSeconds(seconds));
        }
        System.out.printf(
                Locale.ROOT,
                "%d clients for %d s, %d ms of thought between two requests; Java %s, %d cores, load %.1f%n",
                clients,
                seconds,
                think,
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                java.lang.management.ManagementFactory.getOperatingSystemMXBean()
                        .getSystemLoadAverage());
        for (Load.Work work : Load.Work.values()) {
            System.out.printf(
                    Locale.ROOT,
                    "%-10s %6d  p50 %.1f ms, p95 %.1f ms, p99 %.1f ms%n",
                    work.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    result.done(work),
                    result.percentile(work, 0.50),
                    result.percentile(work, 0.95),
                    result.percentile(work, 0.99));
        }
        System.out.printf(
                "edits made again because somebody was quicker: %d; errors: %d; lost: %d%n",
                result.stale(), result.errors().size(), result.lost().size());
        result.errors().stream().limit(5).forEach(System.out::println);
        result.lost().stream().limit(5).forEach(System.out::println);
        FileUtils.deleteDirectory(folder.toFile());
        System.exit(result.errors().isEmpty() && result.lost().isEmpty() ? 0 : 1);
    }
}
