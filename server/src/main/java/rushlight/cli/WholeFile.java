package rushlight.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Writes a file beside the one it replaces and then moves it there, so that nothing is ever half written. */
final class WholeFile {
    private static final Logger LOG = LoggerFactory.getLogger(WholeFile.class);

    /** What writes a file. */
    interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private WholeFile() {}

    /** Why no file can stand there, in a sentence; to be asked before any work is done for it. */
    static Optional<String> refusal(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        if (parent == null || !Files.isDirectory(parent)) {
            return Optional.of(
                    "There is no folder " + parent + "; nothing was written. Make it first, or name another.");
        }
        return Files.isDirectory(file)
                ? Optional.of(file + " is a folder; name a file. Nothing was written.")
                : Optional.empty();
    }

    static void write(Path file, byte[] content) {
        write(file, out -> out.write(content));
    }

    static void write(Path file, Writing writing) {
        Path next = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(next)) {
                writing.to(out);
            }
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        } finally {
            discard(next);
        }
    }

    /** Takes away what was not moved to its place; that it cannot be taken away matters less than why it was not moved. */
    static void discard(Path next) {
        try {
            Files.deleteIfExists(next);
        } catch (IOException e) {
            LOG.debug("Could not take away {}", next, e);
        }
    }
}
