package rushlight.film.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Opens a file that a person named, and says in one sentence why it cannot be read. */
final class InputFile {
    private InputFile() {}

    static String name(Path file) {
        Path last = file.getFileName();
        return last == null ? file.toString() : last.toString();
    }

    /** Why this is no file to read; empty where it looks like one. */
    static Optional<Fault> refusal(Path file) {
        if (Files.isDirectory(file)) {
            return Optional.of(Fault.ofFile(
                    Fault.Code.NOT_A_FILE, file + " is a folder; name the CSV file in it that is to be read."));
        }
        if (!Files.exists(file)) {
            return Optional.of(Fault.ofFile(Fault.Code.MISSING_FILE, "There is no file " + file + "."));
        }
        return Optional.empty();
    }

    static InputStream open(Path file) throws IOException {
        return Files.newInputStream(file);
    }

    /** What stopped the reading. */
    static Fault unreadable(String name, IOException e) {
        if (e instanceof UnreadableTextException text) {
            return text.fault();
        }
        String why = e instanceof AccessDeniedException ? "this account may not open it" : e.getMessage();
        return Fault.ofFile(Fault.Code.UNREADABLE_FILE, name + " cannot be read: " + why + ".");
    }
}
