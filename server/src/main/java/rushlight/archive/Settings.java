package rushlight.archive;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record Settings(
        int format, List<String> evaluators, @Nullable String numbering) {
    static final int FORMAT = 1;
    private static final String FILE = "settings.json";
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    Settings {
        evaluators = List.copyOf(evaluators);
    }

    static Settings in(Path folder) {
        Path file = folder.resolve(FILE);
        if (!Files.exists(file)) {
            return new Settings(FORMAT, List.of(), null);
        }
        try {
            Settings settings = JSON.readValue(Files.readString(file), Settings.class);
            if (settings.format > FORMAT) {
                throw new FolderException("The data folder " + folder + " was written by a newer Rushlight (layout "
                        + settings.format + ", this one knows " + FORMAT + "). Use the newer program.");
            }
            return settings;
        } catch (JsonProcessingException e) {
            throw new FolderException(file + " is not the JSON it should be: " + e.getOriginalMessage(), e);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    Optional<String> defaultNumbering() {
        return Optional.ofNullable(numbering);
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
        return new Settings(format, all, numbering);
    }

    /** Writes beside the old file and then takes its place, so that it is never half there. */
    void save(Path folder) {
        Path file = folder.resolve(FILE);
        Path next = folder.resolve(FILE + ".next");
        try {
            Files.writeString(next, JSON.writeValueAsString(this) + "\n");
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
