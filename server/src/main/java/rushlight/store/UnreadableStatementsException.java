package rushlight.store;

/** Stored statements that cannot be read back: the message says where. */
public final class UnreadableStatementsException extends RuntimeException {
    UnreadableStatementsException(String message, Throwable cause) {
        super(message, cause);
    }
}
