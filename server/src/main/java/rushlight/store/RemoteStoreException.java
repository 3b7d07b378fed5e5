package rushlight.store;

import org.jspecify.annotations.Nullable;

/** The store on another machine could not do what was asked: the message says what, what became of it, and what to do. */
public final class RemoteStoreException extends RuntimeException {
    /** What is the matter. */
    public enum Kind {
        /** It cannot be reached, so that nothing was sent to it; it may be another time. */
        UNREACHED,
        /** It did not answer as it should; it may another time. */
        AWAY,
        /** It does not let us: no right, no such place, too much. */
        REFUSED,
        /** Somebody else has changed it since this folder was in step with it. */
        STALE,
        /** It has the change, and somebody else has changed it since; the change is not to be made again. */
        OVERTAKEN,
        /** It holds nothing any more, though this folder is a copy of what it held. */
        EMPTIED,
        /** It is nothing that film could be kept in, or holds what must not be mixed with this folder's film. */
        UNFIT,
        /** It has the change, and the folder could not take it in yet. */
        AHEAD
    }

    private final Kind kind;

    /** Says what is the matter. */
    public RemoteStoreException(Kind kind, String message, @Nullable Throwable cause) {
        super(message, cause);
        this.kind = kind;
    }

    /** What is the matter. */
    public Kind kind() {
        return kind;
    }

    /** Whether it may be otherwise another time, without anybody's doing. */
    public boolean isAway() {
        return kind == Kind.UNREACHED || kind == Kind.AWAY;
    }
}
