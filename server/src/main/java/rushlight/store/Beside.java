package rushlight.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.apache.commons.io.FileUtils;

/** The place beside the store of a folder where film is laid down while it is fetched. Nothing of it outlasts the fetching. */
final class Beside {
    private static final String NAME = ".fetching";

    private Beside() {}

    static Path of(Path store) {
        return store.resolveSibling(store.getFileName() + NAME);
    }

    /** Takes away what lies there. */
    static void clear(Path store) {
        Path place = of(store);
        try {
            FileUtils.deleteDirectory(place.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(place.toString(), e);
        }
    }
}
