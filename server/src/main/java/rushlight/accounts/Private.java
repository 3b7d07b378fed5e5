package rushlight.accounts;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** Files that their owner alone may read. */
final class Private {
    private Private() {}

    /** Makes an empty file, and leaves one that is there. Where the disk knows no owners, the folder's rights decide. */
    static void create(Path file) throws IOException {
        try {
            if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            } else {
                Files.createFile(file);
            }
        } catch (FileAlreadyExistsException e) {
            return;
        }
    }
}
