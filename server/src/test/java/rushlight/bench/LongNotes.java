package rushlight.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** The annotated narrations told one after the other, until there are as many words as wanted. */
public final class LongNotes {
    /** So many words are spoken in some ninety minutes. */
    public static final int NINETY_MINUTES = 15_000;

    private static final double SECONDS_A_CUE = 4;

    private LongNotes() {}

    /** The lines of all narrations. */
    private static List<String> told() {
        List<String> lines = new ArrayList<>();
        try (InputStream in = Objects.requireNonNull(LongNotes.class.getResourceAsStream("/notes/development.jsonl"))) {
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

    /** WebVTT of at least so many words. */
    public static String of(int words) {
        List<String> lines = told();
        StringBuilder file = new StringBuilder("WEBVTT\n");
        int done = 0;
        for (int cue = 0; done < words; cue++) {
            String line = lines.get(cue % lines.size());
            done += line.split(" ", -1).length;
            file.append('\n').append(time(cue)).append(" --> ").append(time(cue + 0.9));
            file.append('\n').append(line).append('\n');
        }
        return file.toString();
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
}
