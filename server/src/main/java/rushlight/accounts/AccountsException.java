package rushlight.accounts;

/** Something about accounts cannot be done; the message says what, and what to do, to a person. */
public final class AccountsException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    AccountsException(String message) {
        super(message);
    }

    AccountsException(String message, Throwable cause) {
        super(message, cause);
    }
}
