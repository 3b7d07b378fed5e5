package rushlight.report.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** The shipped book, published once for all tests. */
final class Published {
    private static final Path BOOK = publish();

    private Published() {}

    static Path book() {
        return BOOK;
    }

    static List<Path> pages() {
        return files(BOOK)
                .filter(file -> file.toString().endsWith(".html"))
                .sorted()
                .toList();
    }

    static Stream<Path> files(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void publish(Path folder) {
        Ontology ontology = Ontology.packaged();
        BookPublisher.publish(ontology, Taxonomy.of(ontology), folder, false);
    }

    private static Path publish() {
        Path folder = Path.of("target", "published-book").toAbsolutePath();
        try {
            if (Files.exists(folder)) {
                for (Path file : files(folder).toList()) {
                    Files.delete(file);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        publish(folder);
        return folder;
    }
}
