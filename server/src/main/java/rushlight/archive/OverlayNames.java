package rushlight.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.jena.vocabulary.SKOS;
import rushlight.knowledge.BookCheck.Trouble;
import rushlight.knowledge.Rl;

/**
 * Names that are written into a user's own file, one a line, behind what stands there, and taken out of it again. The file is
 * never half there, and never holds a name that its checks refuse.
 */
final class OverlayNames {
    private static final String MARK = " # learned from decisions on notes";
    private static final String CHANGED = Book.OVERLAY + " was changed by somebody else meanwhile. Try again.";

    private final Path folder;

    OverlayNames(Path folder) {
        this.folder = folder;
    }

    /** A name of a concept. */
    record Name(String concept, String words) {
        /** The statement by whole addresses, so that it holds whatever prefixes a file has. */
        private String line() {
            return "<" + Rl.CONCEPT + concept + "> <" + SKOS.hiddenLabel.getURI() + "> \"" + words + "\"@en ." + MARK;
        }
    }

    /**
     * What became of a change.
     *
     * @param reasons why nothing was changed; empty where it was
     * @param notes what is worth knowing though it was changed
     */
    record Written(List<String> reasons, List<String> notes) {}

    /** Whether a name stands there that was written here. */
    boolean has(Name name) {
        return lines(text()).contains(name.line());
    }

    /**
     * Writes a name where the file, with it, passes all checks.
     *
     * @param more what else must hold of a folder with the file as it would be; empty where it does
     */
    Written add(Name name, Function<Path, Optional<String>> more) {
        String before = text();
        Path trial = trial();
        try {
            String kept = before.isEmpty() || before.endsWith("\n") ? before : before + "\n";
            Files.writeString(trial.resolve(Book.OVERLAY), kept + name.line() + "\n");
            List<Trouble> fresh = fresh(trial);
            List<String> reasons = messages(fresh, false);
            if (reasons.isEmpty()) {
                reasons = more.apply(trial).stream().toList();
            }
            if (reasons.isEmpty() && !text().equals(before)) {
                reasons = List.of(CHANGED);
            }
            if (reasons.isEmpty()) {
                put(trial);
            }
            return new Written(reasons, messages(fresh, true));
        } catch (IOException e) {
            throw unwritten(e);
        } finally {
            clear(trial);
        }
    }

    /** What a file has to complain of that the one in force has not. */
    private List<Trouble> fresh(Path trial) {
        List<Trouble> all = OverlayCheck.of(trial);
        if (all.isEmpty()) {
            return all;
        }
        List<Trouble> known = OverlayCheck.of(folder);
        return all.stream().filter(trouble -> !known.contains(trouble)).toList();
    }

    private void put(Path trial) throws IOException {
        Files.move(
                trial.resolve(Book.OVERLAY),
                folder.resolve(Book.OVERLAY),
                StandardCopyOption.REPLACE_EXISTING,
                StandardCopyOption.ATOMIC_MOVE);
    }

    private UncheckedIOException unwritten(IOException e) {
        return new UncheckedIOException(folder.resolve(Book.OVERLAY).toString(), e);
    }

    /** Takes a name out that was written here; what stood beside it stays as it is. */
    Written remove(Name name) {
        Path trial = trial();
        try {
            Files.writeString(
                    trial.resolve(Book.OVERLAY),
                    lines(text()).stream()
                            .filter(line -> !line.equals(name.line()))
                            .map(line -> line + "\n")
                            .collect(Collectors.joining()));
            put(trial);
            return new Written(List.of(), List.of());
        } catch (IOException e) {
            throw unwritten(e);
        } finally {
            clear(trial);
        }
    }

    private static List<String> messages(List<Trouble> troubles, boolean warnings) {
        return troubles.stream()
                .filter(trouble -> trouble.warning() == warnings)
                .map(Trouble::message)
                .toList();
    }

    /** A folder beside the file, so that what is written in it can take the place of the file in one step. */
    private Path trial() {
        try {
            return Files.createTempDirectory(folder, ".overlay");
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }

    private static void clear(Path trial) {
        try (Stream<Path> all = Files.walk(trial)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(trial.toString(), e);
        }
    }

    private static List<String> lines(String text) {
        return text.lines().toList();
    }

    private String text() {
        Path file = folder.resolve(Book.OVERLAY);
        try {
            return Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
