package rushlight.knowledge;

/** The book itself cannot be used: the message says which file and why. The program refuses to start on it. */
public final class BrokenBookException extends RuntimeException {
    /** Says which file is broken, and where. */
    public BrokenBookException(String message) {
        super(message);
    }
}
