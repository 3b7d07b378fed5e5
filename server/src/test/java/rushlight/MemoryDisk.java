package rushlight;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/**
 * Where the folders of all tests are made: on a disk in memory where there is a large one, else where the system makes them. What
 * a test kills or closes is a program, and what that gave to the system stays given; so waiting for a real disk, thousands of
 * times, would show nothing more. Named in {@code junit-platform.properties}.
 */
public final class MemoryDisk implements TempDirFactory {
    private static final Path MEMORY = Path.of("/dev/shm");
    private static final long ENOUGH = 4L << 30;

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext test) throws IOException {
        return folder();
    }

    /** A new folder there, which whoever asked for it takes away. */
    public static Path folder() throws IOException {
        boolean isLarge = Files.isWritable(MEMORY) && Files.getFileStore(MEMORY).getUsableSpace() > ENOUGH;
        return isLarge ? Files.createTempDirectory(MEMORY, "rushlight") : Files.createTempDirectory("rushlight");
    }
}
