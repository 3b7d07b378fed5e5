package rushlight.archive;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rushlight.film.Identity;
import rushlight.film.LogId;
import rushlight.film.Reconciled;

/**
 * What a data folder remembers beside the film.
 *
 * @param format version of the folder's layout
 * @param evaluators whose reading of a rep counts first, by name; those first imported stand first
 * @param numbering the numbering system of a bare alignment number, null where none is set
 * @param store address of the store on another machine that the film is kept in, null where it is kept in the folder
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record Settings(
        int format,
        List<String> evaluators,
        @Nullable String numbering,
        @Nullable String store) {
    static final int FORMAT = 2;
    static final String FILE = "settings.json";
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    Settings {
        evaluators = List.copyOf(evaluators);
    }

    static Settings in(Path folder) {
        Path file = folder.resolve(FILE);
        if (!Files.exists(file)) {
            return new Settings(FORMAT, List.of(), null, null);
        }
        try {
            return read(Files.readString(file), "The data folder " + folder);
        } catch (JsonProcessingException e) {
            throw new FolderException(file + " is not the JSON it should be: " + e.getOriginalMessage(), e);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    /** Reads settings; the version first, for a newer one may hold what this program does not know. */
    static Settings read(String text, String whose) throws JsonProcessingException {
        JsonNode tree = JSON.readTree(text);
        int format = tree.path("format").asInt(0);
        if (format > FORMAT) {
            throw new FolderException(whose + " was written by a newer Rushlight (layout " + format
                    + ", this one knows " + FORMAT + "). Use the newer program.");
        }
        return JSON.treeToValue(tree, Settings.class);
    }

    Optional<String> defaultNumbering() {
        return Optional.ofNullable(numbering);
    }

    Optional<String> keptAt() {
        return Optional.ofNullable(store);
    }

    Settings withStore(Optional<String> address) {
        return new Settings(format, evaluators, numbering, address.orElse(null));
    }

    Comparator<LogId> firstBelieved() {
        List<String> slugs = evaluators.stream().map(Identity::slug).toList();
        return Comparator.comparingInt(log -> {
            if (Reconciled.is(log.evaluator())) {
                return -1;
            }
            int place = slugs.indexOf(log.evaluator());
            return place < 0 ? Integer.MAX_VALUE : place;
        });
    }

    Settings withEvaluators(Collection<String> more) {
        List<String> all = new ArrayList<>(evaluators);
        more.stream()
                .filter(name -> !all.contains(name) && !Reconciled.is(name))
                .forEach(all::add);
        return new Settings(format, all, numbering, store);
    }

    Settings withFormat(int other) {
        return new Settings(other, evaluators, numbering, store);
    }

    /** Writes them where they differ from what stands there. */
    void saveAfter(Settings before, Path folder) {
        if (!equals(before) || !Files.exists(folder.resolve(FILE))) {
            save(folder);
        }
    }

    /** Writes beside the old file and then takes its place, so that it is never half there. */
    void save(Path folder) {
        Path file = folder.resolve(FILE);
        Path next = folder.resolve(FILE + ".next");
        try {
            try (FileChannel out = FileChannel.open(
                    next, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
                out.write(ByteBuffer.wrap((JSON.writeValueAsString(this) + "\n").getBytes(StandardCharsets.UTF_8)));
                out.force(true);
            }
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
