package rushlight.store;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Something could not be written for want of room: the message says where, what became of the change, and what to do. */
public final class FullDiskException extends RuntimeException {
    /** How the systems say it, in lower case. */
    private static final List<String> SAID =
            List.of("no space left", "not enough space", "file too large", "quota exceeded", "disk is full");

    private static final int DEEPEST = 30;

    /** Says what could not be written. */
    public FullDiskException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }

    /** Whether a full disk, or a quota that is used up, lies behind a failure. */
    public static boolean isBehind(@Nullable Throwable trouble) {
        Throwable at = trouble;
        for (int i = 0; at != null && i < DEEPEST; i++) {
            if (at instanceof FullDiskException || isSaid(at)) {
                return true;
            }
            at = at.getCause();
        }
        return false;
    }

    private static boolean isSaid(Throwable trouble) {
        String words = trouble instanceof FileSystemException file ? file.getReason() : trouble.getMessage();
        boolean speaks = trouble instanceof IOException || trouble.getCause() == null;
        return speaks && words != null && SAID.stream().anyMatch(words.toLowerCase(Locale.ROOT)::contains);
    }
}
