package rushlight.knowledge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/** Lists the shipped files, whether they lie in a folder of classes or inside a jar. */
public final class PackedFiles {
    private PackedFiles() {}

    /** Names of the files under a folder of the packed resources, relative to it, in order. */
    public static List<String> under(String folder) {
        URL root = PackedFiles.class.getResource(folder);
        if (root == null) {
            throw new BrokenBookException("The program was packed without its folder " + folder + ".");
        }
        try {
            URI uri = root.toURI();
            if (!"jar".equals(uri.getScheme())) {
                return names(Path.of(uri));
            }
            return root.openConnection() instanceof JarURLConnection packed
                    ? names(packed, folder.substring(1))
                    : List.of();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("A resource has an address that is none: " + root, e);
        } catch (IOException e) {
            throw new UncheckedIOException(root.toString(), e);
        }
    }

    /** The jar is the one that classes are read from, and stays open with it: nothing is read twice. */
    @SuppressWarnings("resource") // it belongs to the loader of the classes
    private static List<String> names(JarURLConnection packed, String folder) throws IOException {
        return packed.getJarFile().stream()
                .map(ZipEntry::getName)
                .filter(name -> name.startsWith(folder) && !name.endsWith("/"))
                .map(name -> name.substring(folder.length()))
                .sorted()
                .toList();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
