package rushlight.archive;

/** A data folder cannot be used: the message says which one, why, and what to do. */
public sealed class FolderException extends RuntimeException permits FolderInUseException {
    /** Says what is wrong with the folder. */
    public FolderException(String message) {
        super(message);
    }

    /** Says what is wrong with the folder, and what lay behind it. */
    public FolderException(String message, Throwable cause) {
        super(message, cause);
    }
}
