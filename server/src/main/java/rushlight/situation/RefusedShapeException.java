package rushlight.situation;

/** A shape says something that a situation cannot say. The message names the shape, what it says and what would do. */
public final class RefusedShapeException extends RuntimeException {
    RefusedShapeException(String message) {
        super(message);
    }
}
