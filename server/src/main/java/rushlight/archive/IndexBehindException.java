package rushlight.archive;

import java.nio.file.Path;
import rushlight.store.FullDiskException;

/** The film is stored and the index could not follow: the message says why, and that nothing was lost. */
public final class IndexBehindException extends RuntimeException {
    private IndexBehindException(String message, Throwable cause) {
        super(message, cause);
    }

    static IndexBehindException of(Path folder, Throwable cause) {
        String why = FullDiskException.isBehind(cause)
                ? "because the disk is full. Make room"
                : "because it cannot be written. See that the folder may be written to and holds no other files";
        return new IndexBehindException(
                "The film is stored and nothing is lost, but the index in " + folder
                        + " could not be brought up to it, " + why
                        + "; it catches up by itself with the next question.",
                cause);
    }
}
