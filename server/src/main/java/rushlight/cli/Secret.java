package rushlight.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** What is not to stand on a command line, where others of the machine could read it. */
final class Secret {
    private Secret() {}

    /** The first line of a file; where none is named, what a variable of the environment says. */
    static Optional<String> of(Optional<Path> file, String variable) {
        return file.map(Secret::firstLine).or(() -> Optional.ofNullable(System.getenv(variable)));
    }

    private static String firstLine(Path file) {
        try {
            return Files.readString(file).lines().findFirst().orElse("");
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
