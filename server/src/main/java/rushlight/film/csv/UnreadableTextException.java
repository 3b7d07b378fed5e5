package rushlight.film.csv;

import java.io.IOException;

/** The text of a file cannot be read any further. */
final class UnreadableTextException extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient Fault fault;

    UnreadableTextException(Fault fault) {
        super(fault.text());
        this.fault = fault;
    }

    Fault fault() {
        return fault;
    }
}
