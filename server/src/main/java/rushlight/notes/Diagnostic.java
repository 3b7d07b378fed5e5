package rushlight.notes;

/**
 * Something in a file of notes that was not as it should be; what could be read was kept.
 *
 * @param code what kind of thing, in capitals
 * @param line the line of the file, from 1
 * @param message what was wrong and what became of it
 */
public record Diagnostic(String code, int line, String message) {}
