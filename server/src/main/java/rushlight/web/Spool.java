package rushlight.web;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/** Text that must stand behind other text which is not written yet: it waits in a file of its own, which is gone in the end. */
public final class Spool implements AutoCloseable {
    private final Path file;
    private final Writer writer;

    private Spool(Path file, Writer writer) {
        this.file = file;
        this.writer = writer;
    }

    /** An empty one. */
    public static Spool open() throws IOException {
        Path file = Files.createTempFile("rushlight", ".part");
        return new Spool(file, Files.newBufferedWriter(file));
    }

    /** Takes text in. */
    public Writer writer() {
        return writer;
    }

    /** Whether nothing was taken in. */
    public boolean isEmpty() throws IOException {
        writer.flush();
        return Files.size(file) == 0;
    }

    /**
     * Writes what was taken in.
     *
     * @param skipped how many characters of it are left out at the beginning
     */
    public void copyTo(Writer out, int skipped) throws IOException {
        writer.flush();
        try (Reader in = Files.newBufferedReader(file)) {
            in.skip(skipped);
            in.transferTo(out);
        }
    }

    @Override
    public void close() throws IOException {
        try (writer) {
            writer.flush();
        } finally {
            Files.deleteIfExists(file);
        }
    }
}
