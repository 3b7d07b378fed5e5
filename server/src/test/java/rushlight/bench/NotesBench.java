package rushlight.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import rushlight.archive.Book;
import rushlight.film.csv.RowsWriter;
import rushlight.notes.NoteFile;
import rushlight.notes.NoteReader;
import rushlight.notes.ProposedLog;
import rushlight.web.NotesStream;

/**
 * Times the reading of notes: the annotated narrations told one after the other until there are as many words as wanted, as
 * WebVTT. Run by {@code server/bench notes}.
 */
public final class NotesBench {
    private static final int RUNS = 3;
    private static final double SECONDS_A_CUE = 4;

    private NotesBench() {}

    public static void main(String[] args) {
        int words = args.length > 0 ? Integer.parseInt(args[0]) : 1_000_000;
        NoteReader reader = NoteReader.of(Book.packaged().taxonomy());
        List<String> told = told();
        for (int wanted : new int[] {15_000, words / 10, words}) {
            byte[] file = file(told, wanted);
            for (int run = 1; run <= RUNS; run++) {
                run(reader, file, wanted, run);
            }
            log(reader, file, wanted);
        }
    }

    private static void run(NoteReader reader, byte[] file, int words, int run) {
        timed(file, words, run, "JSON", (notes, out) -> {
            NotesStream stream = new NotesStream(out);
            stream.file(notes.source(), notes.each(cue -> {}), use -> reader.each(notes, "", List.of(), use));
            stream.end();
        });
    }

    /** The same as the rows of a film log, as {@code rushlight notes --format csv} writes them. */
    private static void log(NoteReader reader, byte[] file, int words) {
        ProposedLog log = ProposedLog.of(Book.packaged().taxonomy());
        var heading = new ProposedLog.Heading("A", "B", "", "");
        timed(file, words, 1, "rows", (notes, out) -> {
            RowsWriter rows = RowsWriter.begun(ProposedLog.HEADER, out);
            reader.each(notes, "", List.of(), piece -> {
                try {
                    for (List<String> row : log.rows(piece, heading)) {
                        rows.write(row);
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        });
    }

    /** Writes what notes say. */
    private interface Writing {
        void write(NoteFile notes, Writer out) throws IOException;
    }

    private static void timed(byte[] file, int words, int run, String what, Writing writing) {
        System.gc();
        long before = used();
        heap().forEach(MemoryPoolMXBean::resetPeakUsage);
        long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        long start = System.nanoTime();
        Counting out = new Counting(0);
        try {
            writing.write(NoteFile.of("long.vtt", file), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        double took = seconds(start);
        double worked = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e9;
        long most = heap().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() >> 20;
        System.out.printf(
                Locale.ROOT,
                "notes: %,9d words as %s, run %d   %.2f s, cpu %.2f s; %.1f MB written; heap %d MB before, at most %d MB"
                        + " with what was not yet collected, %d MB held%n",
                words,
                what,
                run,
                took,
                worked,
                out.count / 1e6,
                before,
                most,
                run == 1 ? held(file, writing) : 0);
    }

    /** The most that is held while it is written, by collecting what is not every now and then. */
    private static long held(byte[] file, Writing writing) {
        Counting out = new Counting(1 << 20);
        try {
            writing.write(NoteFile.of("long.vtt", file), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.held;
    }

    /** Counts what is written and throws it away. */
    private static final class Counting extends Writer {
        private final long step;
        private long count;
        private long looked;
        private long held;

        Counting(long step) {
            this.step = step;
        }

        @Override
        public void write(char[] text, int from, int length) {
            count += length;
            if (step > 0 && (looked == 0 || count - looked > step)) {
                looked = count;
                System.gc();
                held = Math.max(held, used());
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }

    /** The lines of all narrations. */
    private static List<String> told() {
        List<String> lines = new ArrayList<>();
        try (InputStream in =
                Objects.requireNonNull(NotesBench.class.getResourceAsStream("/notes/development.jsonl"))) {
            ObjectMapper json = new ObjectMapper();
            for (String row : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                if (!row.isBlank()) {
                    json.readTree(row).path("text").asText().lines().forEach(lines::add);
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return lines;
    }

    private static byte[] file(List<String> lines, int words) {
        StringBuilder file = new StringBuilder("WEBVTT\n");
        int done = 0;
        for (int cue = 0; done < words; cue++) {
            String line = lines.get(cue % lines.size());
            done += line.split(" ", -1).length;
            file.append('\n').append(time(cue)).append(" --> ").append(time(cue + 0.9));
            file.append('\n').append(line).append('\n');
        }
        return file.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String time(double cue) {
        long millis = Math.round(cue * SECONDS_A_CUE * 1000);
        return String.format(
                Locale.ROOT,
                "%02d:%02d:%02d.%03d",
                millis / 3_600_000,
                millis / 60_000 % 60,
                millis / 1000 % 60,
                millis % 1000);
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static long used() {
        return heap().mapToLong(pool -> pool.getUsage().getUsed()).sum() >> 20;
    }

    private static Stream<MemoryPoolMXBean> heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP);
    }
}
