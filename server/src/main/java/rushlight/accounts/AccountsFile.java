package rushlight.accounts;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The file the accounts stand in: readable by its owner alone, never half written, looked at again whenever another program
 * wrote it.
 */
final class AccountsFile {
    private static final Logger LOG = LoggerFactory.getLogger(AccountsFile.class);
    private static final int FORMAT = 1;
    private static final String NAME = "accounts.json";
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    /** What stands in the file. */
    record Content(int format, List<User> users) {
        Content {
            users = List.copyOf(users);
        }
    }

    /** What was read, and how the file looked then. */
    private record Read(String look, List<User> users) {}

    private final Path file;
    private Read last = new Read("", List.of());

    private final Object writers = new Object();

    AccountsFile(Path folder) {
        this.file = folder.resolve(NAME);
    }

    /**
     * Everybody, as the file says now.
     *
     * @throws AccountsException where it cannot be read; nobody is let in then
     */
    synchronized List<User> users() {
        String look = look();
        if (!look.equals(last.look())) {
            last = new Read(look, look.isEmpty() ? List.of() : read());
        }
        return last.users();
    }

    /** Changes the file; one program at a time. */
    void change(UnaryOperator<List<User>> change) {
        // Two of one program would both believe that they hold the lock of the file.
        synchronized (writers) {
            Path lock = file.resolveSibling(NAME + ".lock");
            try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock held = channel.lock()) {
                if (!held.isValid()) {
                    throw new IOException("The lock was lost.");
                }
                save(change.apply(users()));
            } catch (IOException e) {
                throw new AccountsException("The accounts in " + file + " cannot be written. Is the folder yours?", e);
            }
        }
    }

    private void save(List<User> users) throws IOException {
        Path next = file.resolveSibling(NAME + ".next");
        Files.deleteIfExists(next);
        Private.create(next);
        try (FileChannel out = FileChannel.open(next, StandardOpenOption.WRITE)) {
            out.write(ByteBuffer.wrap(
                    (JSON.writeValueAsString(new Content(FORMAT, users)) + "\n").getBytes(StandardCharsets.UTF_8)));
            out.force(true);
        }
        Files.move(next, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        lasting(file.toAbsolutePath().getParent());
    }

    /** So that the new name outlasts a power cut, too: a token that was taken back stays so. */
    private static void lasting(@Nullable Path folder) {
        if (folder != null) {
            try (FileChannel entries = FileChannel.open(folder, StandardOpenOption.READ)) {
                entries.force(true);
            } catch (IOException e) {
                LOG.debug("This system makes no folder lasting", e);
            }
        }
    }

    private List<User> read() {
        try {
            Content content = JSON.readValue(Files.readString(file), Content.class);
            if (content.format() > FORMAT) {
                throw new AccountsException(
                        file + " was written by a newer Rushlight. Use the newer program for these accounts.");
            }
            return content.users();
        } catch (JsonProcessingException e) {
            throw new AccountsException(
                    file + " is not the list of accounts it should be; nobody is let in until it is mended.", e);
        } catch (IOException e) {
            throw new AccountsException(file + " cannot be read; nobody is let in until it can.", e);
        }
    }

    /** Changes whenever the file is another one; empty where there is none. */
    private String look() {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return now.fileKey() + " " + now.lastModifiedTime() + " " + now.size();
        } catch (NoSuchFileException e) {
            return "";
        } catch (IOException e) {
            throw new AccountsException(file + " cannot be read; nobody is let in until it can.", e);
        }
    }
}
