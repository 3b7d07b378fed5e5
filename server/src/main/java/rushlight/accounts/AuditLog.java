package rushlight.accounts;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who did what, when, and what came of it: one line of JSON each in the data folder, only ever added to. It names routes, not
 * what was asked of them, so that nothing of a player stands in it.
 */
public final class AuditLog {
    private static final String NAME = "audit.jsonl";
    private static final int LOOKED_AT = 4 << 20;
    private static final ObjectMapper JSON = new ObjectMapper();

    /**
     * One line.
     *
     * @param when UTC, to the millisecond
     * @param who the name of the account; empty where nobody was signed in
     * @param with {@code session}, {@code token}, {@code password} or {@code command}
     * @param what the route, with its parts in braces, or the command
     * @param outcome the status of the answer
     * @param from the network address it came from; null for a command
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Entry(
            String when,
            String who,
            String with,
            String what,
            int outcome,
            @Nullable String from) {}

    private final Path file;
    private final Clock clock;

    private AuditLog(Path folder, Clock clock) {
        this.file = folder.resolve(NAME);
        this.clock = clock;
    }

    /** That of a folder. */
    public static AuditLog in(Path folder) {
        return new AuditLog(folder, Clock.systemUTC());
    }

    /**
     * Adds a line.
     *
     * @throws AccountsException where it cannot be written
     */
    public synchronized void add(String who, String with, String what, int outcome, @Nullable String from) {
        Entry entry =
                new Entry(clock.instant().truncatedTo(ChronoUnit.MILLIS).toString(), who, with, what, outcome, from);
        try {
            Private.create(file);
            byte[] line = (JSON.writeValueAsString(entry) + "\n").getBytes(StandardCharsets.UTF_8);
            Files.write(file, line, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new AccountsException("The record of what is done cannot be written to " + file + ".", e);
        }
    }

    /** The latest lines, the newest first; lines that a crash left half written are passed over. */
    public List<Entry> latest(int most) {
        if (!Files.exists(file)) {
            return List.of();
        }
        List<Entry> entries = new ArrayList<>();
        for (String line : tail().split("\n", -1)) {
            entry(line).ifPresent(entries::add);
        }
        Collections.reverse(entries);
        return List.copyOf(entries.subList(0, Math.min(most, entries.size())));
    }

    private static Optional<Entry> entry(String line) {
        try {
            return line.isBlank() ? Optional.empty() : Optional.of(JSON.readValue(line, Entry.class));
        } catch (JsonProcessingException halfWritten) {
            return Optional.empty();
        }
    }

    private String tail() {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            long from = Math.max(0, in.length() - LOOKED_AT);
            byte[] bytes = new byte[(int) (in.length() - from)];
            in.seek(from);
            in.readFully(bytes);
            return new String(bytes, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AccountsException("The record of what was done cannot be read from " + file + ".", e);
        }
    }
}
