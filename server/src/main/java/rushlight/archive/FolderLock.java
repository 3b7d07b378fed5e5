package rushlight.archive;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.store.FullDiskException;

/**
 * One process holds a data folder at a time. The lock file tells the next one who and since when and, where the holder
 * shows the folder in a browser, in a second line at which address.
 */
final class FolderLock implements AutoCloseable {
    private static final String FILE = "lock";
    private static final Logger LOG = LoggerFactory.getLogger(FolderLock.class);

    private final FileChannel channel;
    private final FileLock lock;

    private FolderLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Makes a folder where there is none.
     *
     * @throws FolderException where it cannot be made
     */
    static void make(Path folder) {
        if (Files.isRegularFile(folder)) {
            throw new FolderException(folder + " is a file, not a folder. Name the data folder with --data.");
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new FolderException(
                    "The data folder " + folder
                            + " cannot be made: is there a file of that name, or no permission to write?",
                    e);
        }
    }

    static FolderLock take(Path folder) {
        Path file = folder.resolve(FILE);
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            FileLock lock = tried(channel);
            if (lock == null) {
                channel.close();
                throw inUse(folder, file);
            }
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(who().getBytes(StandardCharsets.UTF_8)), 0);
            channel.force(true);
            return new FolderLock(channel, lock);
        } catch (IOException e) {
            String why = FullDiskException.isBehind(e)
                    ? " cannot be written to, for its disk is full. Make room."
                    : " cannot be written to. Check its permissions, or name another with --data.";
            throw new FolderException("The data folder " + folder + why + " Nothing was changed.", e);
        }
    }

    private static @Nullable FileLock tried(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null; // held by this same program
        }
    }

    private static FolderInUseException inUse(Path folder, Path file) throws IOException {
        List<String> lines = Files.readString(file).lines().toList();
        String holder =
                lines.stream().findFirst().filter(line -> !line.isBlank()).orElse("another program");
        return new FolderInUseException(folder, holder, lines.stream().skip(1).findFirst());
    }

    private static String who() {
        return "process " + ProcessHandle.current().pid() + " on " + host() + " since "
                + Instant.now().truncatedTo(ChronoUnit.SECONDS) + "\n";
    }

    /** Writes down at which address the folder is shown, for whoever finds it held. */
    void shownAt(String address) {
        try {
            channel.write(ByteBuffer.wrap((address + "\n").getBytes(StandardCharsets.UTF_8)), channel.size());
            channel.force(true);
        } catch (IOException e) {
            LOG.warn("The address could not be written into the lock; others are not told of it", e);
        }
    }

    private static String host() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            return "this machine";
        }
    }

    @Override
    public void close() {
        try (channel) {
            lock.release();
        } catch (IOException e) {
            throw new FolderException("The lock of the data folder could not be given back.", e);
        }
    }
}
