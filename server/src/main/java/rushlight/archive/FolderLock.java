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
import org.jspecify.annotations.Nullable;
import rushlight.store.FullDiskException;

/** One process holds a data folder at a time; the lock file tells the next one who and since when. */
final class FolderLock implements AutoCloseable {
    private static final String FILE = "lock";

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
                throw new FolderInUseException(folder, holder(file));
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

    private static String holder(Path file) throws IOException {
        String text = Files.readString(file).strip();
        return text.isEmpty() ? "another program" : text;
    }

    private static String who() {
        return "process " + ProcessHandle.current().pid() + " on " + host() + " since "
                + Instant.now().truncatedTo(ChronoUnit.SECONDS);
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
