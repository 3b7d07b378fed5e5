package rushlight.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file beside the one it replaces and then moves it there, so that nothing is ever half written. */
final class WholeFile {
    private WholeFile() {}

    static void write(Path file, byte[] content) {
        Path next = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.write(next, content);
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
