package rushlight.film.csv;

import java.util.Optional;

/** Turns one value of a cell into the form in which it is kept, or tells what is wrong with it. */
interface ValueReader {
    /**
     * Reads a value.
     *
     * @param text the value, not blank
     * @param notes takes the fault where the value is none of this column
     */
    Optional<String> read(String text, RowNotes notes);
}
