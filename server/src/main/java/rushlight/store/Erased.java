package rushlight.store;

/**
 * What was erased of a prospect.
 *
 * @param logs logs of him
 * @param statements everything that was stored of him, history and what people kept included, as triples
 * @param mentions texts about others that named him, in which his name was blacked out, beside those of the history
 */
public record Erased(long logs, long statements, long mentions) {}
