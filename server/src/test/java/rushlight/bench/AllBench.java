package rushlight.bench;

import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SortedMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;
import org.eclipse.rdf4j.repository.sail.SailRepository;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.archive.DemoLeague;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.FilmLogWriter;
import rushlight.film.csv.ReadResult;
import rushlight.index.Count;

/**
 * Measures everything at growing sizes of one folder, beside three other engines that count the same, and writes the table.
 * Arguments: sizes in reps, growing. What would take the others too long or too much memory is left out and said so.
 */
public final class AllBench {
    private static final int REPS_A_PROSPECT = 300;
    private static final int AT_ONCE = 100_000;
    private static final int MOST_IN_MEMORY = 100_000;
    private static final int RUNS = 15;
    private static final double HUNDRED_THOUSAND = 100_000;

    private final Path work;
    private final Season season;
    private final Book book = Book.packaged();
    private final List<Log> film = new ArrayList<>();
    private final List<String> table = new ArrayList<>();
    private int batch;

    private AllBench(Path work) {
        this.work = work;
        try (Archive demo = Archive.open(work.resolve("demo"))) {
            DemoLeague.into(demo);
            this.season = new Season(demo.logs());
        }
    }

    public static void main(String[] args) throws Exception {
        int[] sizes = args.length == 0
                ? new int[] {10_000, 30_000, 100_000, 300_000}
                : Arrays.stream(args).mapToInt(Integer::parseInt).sorted().toArray();
        Path work = Files.createTempDirectory("rushlight-all");
        AllBench bench = new AllBench(work);
        bench.run(sizes);
        Path written = Path.of("server/target/benchmarks.md");
        Files.createDirectories(written.getParent());
        Files.write(written, bench.table);
        bench.table.forEach(System.out::println);
        FileUtils.deleteDirectory(work.toFile());
    }

    private void run(int... sizes) throws Exception {
        table.add(String.format(
                Locale.ROOT,
                "%s, Java %s, %d cores, heap at most %d MB, load %.1f at the beginning. Medians of %d after as many to warm up.",
                System.getProperty("os.arch"),
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20,
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                RUNS));
        table.add("");
        row(
                "reps",
                "import, reps/s",
                "most heap, MB",
                "open, s",
                "server started, s",
                "one assessed, ms",
                "all assessed, s",
                "ask p50, ms",
                "ask p95, ms",
                "an edit, ms",
                "a question right after it, ms",
                "heap kept per 100,000, MB",
                "disk per 100,000, MB",
                "count by index, ms",
                "SPARQL over TDB2",
                "RDF4J in memory",
                "H2 in memory");
        row(Stream.generate(() -> "---").limit(17).toArray(String[]::new));
        for (int size : sizes) {
            measure(size);
        }
    }

    private void measure(int size) throws Exception {
        Path folder = work.resolve("season");
        resetPeak();
        double importing = 0;
        int before = reps();
        try (Archive archive = Archive.open(folder)) {
            while (reps() < size) {
                importing += bring(archive, Math.min(AT_ONCE, size - reps()));
            }
        }
        long peak = peak();
        String started = Started.on(folder);
        long empty = kept();
        long start = System.nanoTime();
        try (Archive archive = Archive.open(folder)) {
            double open = seconds(start);
            String one = film.get(0).prospect().id();
            double assessOne = median(() -> archive.assess(one));
            start = System.nanoTime();
            int assessed = archive.assess().size();
            double assessAll = seconds(start);
            double[] asked = new AskBench(archive).all();
            double heap = (kept() - empty) / (double) (1 << 20);
            AfterEdits edits = AfterEdits.of(archive, film.get(0), RUNS);
            Engines engines = new Engines(archive);
            SortedMap<String, Count> counted = engines.index();
            double index = median(engines::index);
            row(
                    Integer.toString(reps()),
                    text("%.0f", (reps() - before) / importing),
                    Long.toString(peak),
                    text("%.2f", open),
                    started,
                    text("%.1f", assessOne),
                    text("%.1f (%d)", assessAll, assessed),
                    text("%.1f", AskBench.at(asked, 0.50)),
                    text("%.1f", AskBench.at(asked, 0.95)),
                    text("%.1f", edits.edit()),
                    text("%.1f", edits.question()),
                    text("%.0f", heap * HUNDRED_THOUSAND / reps()),
                    text("%.0f", megabytes(folder) * HUNDRED_THOUSAND / reps()),
                    text("%.2f", index),
                    beside(index, counted, engines::sparql),
                    other(engines, index, counted),
                    tables(engines, index, counted));
        }
    }

    private int reps() {
        return film.stream().mapToInt(log -> log.readings().size()).sum();
    }

    /** Imports more film and gives the seconds it took, from the CSV on. */
    private double bring(Archive archive, int reps) throws IOException {
        List<Log> more = season.of(batch++, Math.max(1, reps / REPS_A_PROSPECT), Math.min(reps, REPS_A_PROSPECT));
        Path file = work.resolve("season.csv");
        try (Writer out = Files.newBufferedWriter(file)) {
            FilmLogWriter.of(book.taxonomy().film()).write(more, out);
        }
        film.addAll(more);
        long start = System.nanoTime();
        ReadResult read = FilmLogReader.of(book.taxonomy()).read(file, FilmLogReader.Options.none());
        archive.put(((ReadResult.Accepted) read).logs(), List.of(), false);
        double took = seconds(start);
        Files.delete(file);
        return took;
    }

    private String other(Engines engines, double index, SortedMap<String, Count> counted) throws IOException {
        if (reps() > MOST_IN_MEMORY) {
            return "left out: memory";
        }
        SailRepository other = engines.other(work);
        try {
            return beside(index, counted, () -> engines.other(other));
        } finally {
            other.shutDown();
        }
    }

    private String tables(Engines engines, double index, SortedMap<String, Count> counted) throws Exception {
        if (reps() > MOST_IN_MEMORY) {
            return "left out: memory";
        }
        try (Connection tables = engines.tables(film)) {
            return beside(index, counted, () -> engines.tables(tables));
        }
    }

    /** What another engine takes for the same figures, the better of two runs, and how many times ours that is. */
    private static String beside(
            double index, SortedMap<String, Count> counted, Supplier<SortedMap<String, Count>> other) {
        double best = Double.MAX_VALUE;
        for (int run = 0; run < 2; run++) {
            long start = System.nanoTime();
            SortedMap<String, Count> its = other.get();
            best = Math.min(best, 1000 * seconds(start));
            if (!its.equals(counted)) {
                throw new IllegalStateException("The engines count differently: " + its + " and " + counted);
            }
        }
        return text("%.0f ms, %.0f times", best, best / index);
    }

    private static double median(Supplier<?> work) {
        double[] times = new double[2 * RUNS];
        for (int i = 0; i < times.length; i++) {
            long start = System.nanoTime();
            Objects.requireNonNull(work.get());
            times[i] = 1000 * seconds(start);
        }
        return AskBench.at(Arrays.copyOfRange(times, RUNS, times.length), 0.50);
    }

    /** As the disk has it: the store's files are made longer than what is in them. */
    private static double megabytes(Path folder) throws IOException {
        Process du = new ProcessBuilder("du", "-sk", folder.toString()).start();
        String said = new String(du.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        return Long.parseLong(said.split("\\s+", 2)[0]) / 1024.0;
    }

    private void row(String... cells) {
        table.add("| " + String.join(" | ", cells) + " |");
        System.err.println(table.get(table.size() - 1));
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static long kept() {
        System.gc();
        return heap().mapToLong(p -> p.getUsage().getUsed()).sum();
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
