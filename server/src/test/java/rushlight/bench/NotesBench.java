package rushlight.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
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
import rushlight.notes.Narration;
import rushlight.notes.Narrations;
import rushlight.notes.NoteReader;
import rushlight.notes.Notes;
import rushlight.notes.ProposedLog;
import rushlight.web.Json;
import rushlight.web.NotesAnswer;

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
        System.gc();
        long before = used();
        heap().forEach(MemoryPoolMXBean::resetPeakUsage);
        long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        long start = System.nanoTime();
        Narration narration = Narrations.read("long.vtt", file);
        double readers = seconds(start);
        Notes notes = reader.read(narration);
        double read = seconds(start);
        String json = Json.text(NotesAnswer.of(notes));
        System.out.printf(
                Locale.ROOT,
                "notes: %,9d words, run %d   %.2f s (file %.2f s, reading %.2f s, JSON %.2f s); cpu %.2f s; %d reps,"
                        + " %.1f MB of JSON; heap %d MB before, at most %d MB%n",
                words,
                run,
                seconds(start),
                readers,
                read - readers,
                seconds(start) - read,
                (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e9,
                notes.reps().size(),
                json.length() / 1e6,
                before,
                heap().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() >> 20);
    }

    /** The same as the rows of a film log, piece by piece, as {@code rushlight notes --format csv} reads it. */
    private static void log(NoteReader reader, byte[] file, int words) {
        System.gc();
        long before = used();
        heap().forEach(MemoryPoolMXBean::resetPeakUsage);
        long start = System.nanoTime();
        ProposedLog log = ProposedLog.of(Book.packaged().taxonomy());
        var heading = new ProposedLog.Heading("A", "B", "", "");
        int[] rows = {0};
        reader.each(
                Narrations.read("long.vtt", file),
                "",
                piece -> rows[0] += log.rows(piece, heading).size());
        System.out.printf(
                Locale.ROOT,
                "notes: %,9d words as %d rows %.2f s; heap %d MB before, at most %d MB%n",
                words,
                rows[0],
                seconds(start),
                before,
                heap().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() >> 20);
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
