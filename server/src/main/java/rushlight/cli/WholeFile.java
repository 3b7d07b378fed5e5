package rushlight.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Writes a file beside the one it replaces and then moves it there, so that nothing is ever half written. */
final class WholeFile {
    private static final Logger LOG = LoggerFactory.getLogger(WholeFile.class);

    private WholeFile() {}

    static void write(Path file, byte[] content) {
        Path next = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.write(next, content);
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
