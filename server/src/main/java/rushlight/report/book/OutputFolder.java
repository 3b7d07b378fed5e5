package rushlight.report.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;

/**
 * A folder that is written whole or not at all. It keeps a list of what it wrote, with the hash of each file, so that a later
 * run replaces its own files and nothing else.
 */
final class OutputFolder {
    /** The list of what was written. */
    static final String LIST = ".rushlight-book";

    private final Path folder;

    OutputFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** Why nothing may be written here, for a person; empty where all is well. */
    List<String> objections(boolean replace) {
        if (Files.notExists(folder)) {
            return List.of();
        }
        if (!Files.isDirectory(folder)) {
            return List.of(folder + " is a file. Name a folder.");
        }
        List<String> present = files(folder);
        if (present.isEmpty()) {
            return List.of();
        }
        if (!present.contains(LIST)) {
            return List.of(folder + " holds other files. Name a new or an empty folder.");
        }
        if (!replace) {
            return List.of(folder + " holds a book already. Say --force to replace it.");
        }
        List<String> changed = new ArrayList<>();
        listed(folder).forEach((name, hash) -> {
            Path file = folder.resolve(name);
            if (Files.exists(file) && !hash.equals(hash(bytes(file)))) {
                changed.add(file + " was changed since it was written. Move it out of the way first.");
            }
        });
        return changed;
    }

    /** Files of somebody else that stand where a page would go, each as a sentence. */
    List<String> inTheWay(Set<String> pages) {
        return Files.notExists(folder)
                ? List.of()
                : theirs().stream()
                        .filter(pages::contains)
                        .map(name ->
                                folder.resolve(name) + " is not ours, and a page goes there. Move it out of the way.")
                        .toList();
    }

    private List<String> theirs() {
        Map<String, String> mine = listed(folder);
        return files(folder).stream()
                .filter(name -> !mine.containsKey(name) && !name.equals(LIST))
                .toList();
    }

    /**
     * Writes everything beside the folder and then takes its place. Files that somebody else put into an earlier book stay
     * where they were.
     */
    void write(SortedMap<String, byte[]> pages) {
        try {
            Path parent = folder.getParent() == null ? folder : folder.getParent();
            Files.createDirectories(parent);
            Path fresh = beside(parent, "new");
            try {
                fill(fresh, pages);
                replace(fresh, parent);
            } finally {
                FileUtils.deleteDirectory(fresh.toFile());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }

    /** A new folder beside ours, with the rights a folder has here. */
    private Path beside(Path parent, String what) throws IOException {
        return Files.createDirectory(parent.resolve("." + folder.getFileName() + "-" + what + "-" + UUID.randomUUID()));
    }

    private static void fill(Path fresh, SortedMap<String, byte[]> pages) throws IOException {
        StringBuilder list = new StringBuilder();
        for (Map.Entry<String, byte[]> page : pages.entrySet()) {
            Path file = fresh.resolve(page.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, page.getValue());
            list.append(hash(page.getValue()))
                    .append("  ")
                    .append(page.getKey())
                    .append('\n');
        }
        Files.writeString(fresh.resolve(LIST), list, StandardCharsets.UTF_8);
    }

    private void replace(Path fresh, Path parent) throws IOException {
        if (Files.notExists(folder)) {
            Files.move(fresh, folder);
            return;
        }
        List<String> theirs = theirs();
        for (String name : theirs) {
            Files.createDirectories(fresh.resolve(name).getParent());
        }
        Path before = beside(parent, "old");
        Path old = before.resolve("book");
        Files.move(folder, old);
        Files.move(fresh, folder);
        for (String name : theirs) {
            Files.move(old.resolve(name), folder.resolve(name));
        }
        FileUtils.deleteDirectory(before.toFile());
    }

    /** What an earlier run wrote: name and hash. */
    private static Map<String, String> listed(Path folder) {
        Map<String, String> mine = new TreeMap<>();
        Path list = folder.resolve(LIST);
        if (Files.exists(list)) {
            new String(bytes(list), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.length() > 66)
                    .forEach(line -> mine.put(line.substring(66), line.substring(0, 64)));
        }
        return mine;
    }

    private static List<String> files(Path root) {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(file -> !Files.isDirectory(file))
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(root.toString(), e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
