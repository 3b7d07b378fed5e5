package rushlight.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.knowledge.BrokenBookException;
import rushlight.store.Holdings;
import rushlight.store.Store;
import rushlight.store.UnreadableStatementsException;

/**
 * Makes a data folder of a backup. It is built beside its place and counted there; only what is whole is moved into it, in
 * one step. Whatever was in the place before is kept under another name.
 */
public final class Restoring {
    private static final Logger LOG = LoggerFactory.getLogger(Restoring.class);
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss-SSS", Locale.ROOT).withZone(ZoneOffset.UTC);

    /** A store on disk takes about this many times the room of its N-Quads, counting the index. */
    private static final long GROWTH = 3;

    private static final long LEAST = 256L << 20;

    /**
     * What was done.
     *
     * @param manifest what the backup held
     * @param aside where the folder that was there before is now
     * @param unread why the user's own terms cannot be used with this book, where they cannot
     */
    public record Restored(BackupManifest manifest, Optional<Path> aside, Optional<String> unread) {}

    private Restoring() {}

    /**
     * Restores a backup.
     *
     * @param folder a new or an empty one
     * @param force take the place of one that holds something, and keep that aside
     * @throws RefusedBackupException where backup or folder are not as they should be; nothing was touched then
     */
    public static Restored restore(Path file, Path folder, boolean force) {
        Path place = folder.toAbsolutePath().normalize();
        boolean taken = isTaken(place);
        if (taken && !force) {
            throw new RefusedBackupException(
                    "The folder " + folder + " is not empty. Name a new one with --data, or take"
                            + " --force: what is there is then kept under another name. Nothing was touched.");
        }
        try (BackupFile backup = BackupFile.open(file)) {
            Files.createDirectories(parent(place));
            demandRoom(backup, parent(place));
            Path built = Files.createTempDirectory(parent(place), place.getFileName() + ".restoring-");
            try {
                Optional<String> unread = build(backup, built);
                Optional<Path> aside = moveIn(built, place, taken);
                return new Restored(backup.manifest(), aside, unread);
            } finally {
                FileUtils.deleteDirectory(built.toFile());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }

    private static Optional<String> build(BackupFile backup, Path built) throws IOException {
        for (BackupManifest.Part part : backup.manifest().parts()) {
            if (!part.name().equals(BackupManifest.STORE)) {
                try (InputStream in = backup.part(part.name())) {
                    Files.copy(in, built.resolve(part.name()), StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        Settings settings = Settings.in(built);
        // A backup is older than what is kept elsewhere; it is not to take its place, nor to be replaced by it,
        // unasked.
        settings.withStore(Optional.empty()).saveAfter(settings, built);
        Holdings found;
        Files.createDirectories(built.resolve(Archive.STORE));
        try (Store store = Store.in(
                        built.resolve(Archive.STORE), Book.packaged().taxonomy().film());
                InputStream in = backup.part(BackupManifest.STORE)) {
            found = store.whole().read(in);
        } catch (UnreadableStatementsException e) {
            throw new RefusedBackupException(
                    "The backup cannot be used: " + BackupManifest.STORE + " cannot be read (" + e.getMessage()
                            + "). Nothing was touched.",
                    e);
        }
        if (!found.equals(backup.manifest().holdings())) {
            throw new RefusedBackupException("The backup cannot be used: it says that it holds "
                    + told(backup.manifest().holdings()) + ", and holds " + told(found) + ". Nothing was touched.");
        }
        try (Archive archive = Archive.open(built)) {
            LOG.debug(
                    "Indexed what was restored at revision {}", archive.store().revision());
            return Optional.empty();
        } catch (BrokenBookException e) {
            return Optional.ofNullable(e.getMessage());
        }
    }

    private static Optional<Path> moveIn(Path built, Path place, boolean taken) throws IOException {
        Optional<Path> aside = Optional.empty();
        if (taken) {
            FolderLock.take(place).close();
            Path old = place.resolveSibling(place.getFileName() + ".before-" + STAMP.format(Writing.now()));
            Files.move(place, old, StandardCopyOption.ATOMIC_MOVE);
            aside = Optional.of(old);
        } else {
            Files.deleteIfExists(place);
        }
        try {
            Files.move(built, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            if (aside.isPresent()) {
                Files.move(aside.get(), place, StandardCopyOption.ATOMIC_MOVE);
            }
            throw e;
        }
        return aside;
    }

    private static boolean isTaken(Path place) {
        if (Files.exists(place) && !Files.isDirectory(place)) {
            throw new RefusedBackupException(place + " is a file. Name a folder with --data. Nothing was touched.");
        }
        if (!Files.exists(place)) {
            return false;
        }
        try (Stream<Path> all = Files.list(place)) {
            return all.findAny().isPresent();
        } catch (IOException e) {
            throw new UncheckedIOException(place.toString(), e);
        }
    }

    private static void demandRoom(BackupFile backup, Path beside) throws IOException {
        long needed = LEAST + backup.bytes() * GROWTH;
        long free = Files.getFileStore(beside).getUsableSpace();
        if (free < needed) {
            throw new RefusedBackupException(
                    "The disk of " + beside + " has " + (free >> 20) + " MB free, and restoring" + " takes up to "
                            + (needed >> 20) + " MB. Make room. Nothing was touched.");
        }
    }

    private static String told(Holdings holdings) {
        return holdings.logs() + " logs, " + holdings.readings() + " readings, " + holdings.kept() + " things kept, "
                + holdings.changes() + " changes and " + holdings.statements() + " statements at revision "
                + holdings.revision();
    }

    private static Path parent(Path place) {
        Path parent = place.getParent();
        if (parent == null) {
            throw new RefusedBackupException("A backup is not restored into " + place + " itself.");
        }
        return parent;
    }
}
