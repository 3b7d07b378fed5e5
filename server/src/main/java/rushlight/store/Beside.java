package rushlight.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

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
        if (!Files.exists(place)) {
            return;
        }
        List<Path> all = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(place)) {
            walk.sorted((a, b) -> b.compareTo(a)).forEach(all::add);
            for (Path path : all) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(place.toString(), e);
        }
    }
}
