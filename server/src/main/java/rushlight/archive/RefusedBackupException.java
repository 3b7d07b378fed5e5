package rushlight.archive;

/** A backup that is not restored: the message says why. Nothing was touched. */
public final class RefusedBackupException extends RuntimeException {
    RefusedBackupException(String message) {
        super(message);
    }

    RefusedBackupException(String message, Throwable cause) {
        super(message, cause);
    }
}
