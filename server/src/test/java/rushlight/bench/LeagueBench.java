package rushlight.bench;

import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.archive.DemoLeague;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.FilmLogWriter;
import rushlight.film.csv.ReadResult;
import rushlight.situation.Situation;
import rushlight.situation.Tape;
import rushlight.situation.Tapes;

/**
 * Times what a department does: import a season, assess one man, assess everybody. The film is the demo league's, told
 * again under other names. Run by {@code server/bench}; prints a table and the plain SPARQL answer beside ours.
 */
public final class LeagueBench {
    private static final int REPS_A_PROSPECT = 300;
    private static final int RUNS = 15;

    private final Path work;
    private final Book book = Book.packaged();
    private final Season season;

    private LeagueBench(Path work) throws IOException {
        this.work = work;
        try (Archive demo = Archive.open(work.resolve("demo"))) {
            DemoLeague.into(demo);
            this.season = new Season(demo.logs());
        }
    }

    public static void main(String[] args) throws IOException {
        int batches = args.length > 0 ? Integer.parseInt(args[0]) : 3;
        int prospects = args.length > 1 ? Integer.parseInt(args[1]) : 334;
        Path work = Files.createTempDirectory("rushlight-bench");
        System.out.printf(
                Locale.ROOT,
                "%s, Java %s, %d cores, heap at most %d MB%n",
                System.getProperty("os.arch"),
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20);
        new LeagueBench(work).run(batches, prospects);
        FileUtils.deleteDirectory(work.toFile());
    }

    private void run(int batches, int prospects) throws IOException {
        try (Archive archive = Archive.open(work.resolve("season"))) {
            for (int batch = 0; batch < batches; batch++) {
                importBatch(archive, batch, prospects);
            }
            oneProspect(archive);
            everybody(archive, batches * prospects);
            counts(archive);
            new AskBench(archive).run();
        }
    }

    private void importBatch(Archive archive, int batch, int prospects) throws IOException {
        Path file = work.resolve("batch-" + batch + ".csv");
        int reps;
        try (Writer out = Files.newBufferedWriter(file)) {
            List<Log> logs = season.of(batch, prospects, REPS_A_PROSPECT);
            reps = logs.stream().mapToInt(l -> l.readings().size()).sum();
            FilmLogWriter.of(book.taxonomy().film()).write(logs, out);
        }
        resetPeak();
        long cpu = cpu();
        long start = System.nanoTime();
        ReadResult read = FilmLogReader.of(book.taxonomy()).read(file, FilmLogReader.Options.none());
        double reading = seconds(start);
        archive.put(((ReadResult.Accepted) read).logs(), List.of(), false);
        double all = seconds(start);
        line(
                "import " + reps + " reps (batch " + (batch + 1) + ")",
                "%.1f s, %.0f reps/s; reading alone %.1f s; cpu %.1f s; peak heap %d MB",
                all,
                reps / all,
                reading,
                (cpu() - cpu) / 1e9,
                peak());
        Files.delete(file);
    }

    private void oneProspect(Archive archive) throws IOException {
        List<Log> his = season.of(99, 1, 400);
        archive.put(his, List.of(), false);
        String id = his.get(0).prospect().id();
        int reps = archive.assess(id).orElseThrow().reps();
        line("assess one of " + reps + " reps, index, warm", "%.1f ms", median(() -> archive.assess(id)));
        Tape tape = Tapes.of(his.stream().map(book::classified).toList()).get(0);
        line("assess one of " + reps + " reps, memory, classified", "%.1f ms", median(() -> book.assess(tape)));
        line("the same, classified too", "%.1f ms", median(() -> book.assess(his)));
    }

    private void everybody(Archive archive, int prospects) {
        long cpu = cpu();
        long start = System.nanoTime();
        int findings =
                archive.assess().stream().mapToInt(a -> a.findings().size()).sum();
        line(
                "assess all " + (prospects + 1) + " prospects x " + REPS_A_PROSPECT + " reps",
                "%.1f s (%d findings); cpu %.1f s",
                seconds(start),
                findings,
                (cpu() - cpu) / 1e9);
    }

    private void counts(Archive archive) {
        compare(
                archive,
                "kick-outs on which the edge was lost",
                Situation.has("repClass", "opp-kick-out"),
                Situation.has("result", "edge-lost-outside"),
                "?r rl:repClass kb:opp-kick-out ",
                "?r rl:result/skos:broader* kb:edge-lost-outside");
        compare(
                archive,
                "stopped rushes with no second action",
                Situation.has("repClass", "first-move-stopped"),
                Situation.has("repClass", "no-second-action"),
                "?r rl:repClass kb:first-move-stopped ",
                "?r rl:repClass kb:no-second-action");
        compare(
                archive,
                "power moves on which the feet stopped",
                Situation.has("move", "power-move"),
                Situation.has("fault", "feet-stop-at-contact"),
                "?r rl:hisStep/rl:does ?m . ?m skos:broader* kb:power-move ",
                "?r rl:fault kb:feet-stop-at-contact");
    }

    private void compare(
            Archive archive,
            String what,
            Situation opportunity,
            Situation event,
            String inSparql,
            String eventInSparql) {
        double ours = median(() -> archive.watch(f -> f.counts(opportunity, event)));
        long start = System.nanoTime();
        int rows = SameInSparql.rows(archive, inSparql, eventInSparql);
        double sparql = 1000 * seconds(start);
        line(
                what,
                "%.1f ms by the index, %.0f ms by SPARQL over TDB2 (%d rows): 1 to %.0f",
                ours,
                sparql,
                rows,
                sparql / ours);
    }

    private static double median(Supplier<?> work) {
        double[] times = new double[2 * RUNS];
        for (int i = 0; i < times.length; i++) {
            long start = System.nanoTime();
            Object answer = work.get();
            times[i] = 1000 * seconds(start);
            if (answer == null) {
                throw new IllegalStateException("Nothing was measured.");
            }
        }
        double[] warm = Arrays.copyOfRange(times, RUNS, times.length);
        Arrays.sort(warm);
        return warm[RUNS / 2];
    }

    private static void line(String what, String figures, Object... values) {
        System.out.printf(Locale.ROOT, "%-52s %s%n", what, String.format(Locale.ROOT, figures, values));
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static Stream<MemoryPoolMXBean> heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(p -> p.getType() == MemoryType.HEAP);
    }

    private static void resetPeak() {
        heap().forEach(MemoryPoolMXBean::resetPeakUsage);
    }

    private static long peak() {
        return heap().mapToLong(p -> p.getPeakUsage().getUsed()).sum() >> 20;
    }
}
