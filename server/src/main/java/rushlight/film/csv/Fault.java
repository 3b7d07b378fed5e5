package rushlight.film.csv;

import java.util.List;
import java.util.Locale;

/**
 * Something in a file that a person must look at: an error, or, among the warnings, an oddity.
 *
 * @param line line of the file on which the row starts, from 1; 0 where it is about the file as a whole
 * @param column the column, or empty where it is about the row
 * @param value what stands there
 * @param code what kind of fault it is
 * @param message one sentence: what was found and what would be right
 * @param nearest what may have been meant, the likeliest first
 */
public record Fault(int line, String column, String value, Code code, String message, List<String> nearest) {
    private static final int LONGEST_VALUE = 60;

    /** The kinds of fault. Their names do not change; the sentences may improve. */
    public enum Code {
        MISSING_FILE,
        NOT_A_FILE,
        UNREADABLE_FILE,
        NOT_CSV,
        NOT_UTF_8,
        EMPTY_FILE,
        NO_ROWS,
        LINE_TOO_LONG,
        QUOTE_NOT_CLOSED,
        UNKNOWN_COLUMN,
        REPEATED_COLUMN,
        MISSING_COLUMN,
        UNNAMED_COLUMN,
        PASSED_OVER,
        CELL_COUNT,
        BLANK,
        UNKNOWN_LABEL,
        AMBIGUOUS_LABEL,
        OTHER_COLUMN,
        UNKNOWN_WORD,
        SEVERAL_VALUES,
        NOT_A_NUMBER,
        NOT_A_DATE,
        NOT_A_CLOCK,
        NOT_A_TIME,
        ENDS_BEFORE_START,
        CONTROL_CHARACTER,
        NO_LETTER,
        EXCHANGE_FORM,
        WRONG_MAN,
        UNKNOWN_HAND,
        UNKNOWN_NUMBER,
        NUMBER_UNCLEAR,
        DUTY_SOURCE,
        REPEATED_REP,
        NAMES_COLLIDE,
        GAMES_COLLIDE,
        IMPLAUSIBLE,
        UNITS_DISAGREE;

        /** The name for programs, such as {@code unknown-label}. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public Fault {
        value = value.length() > LONGEST_VALUE ? value.substring(0, LONGEST_VALUE) + "..." : value;
        nearest = List.copyOf(nearest);
    }

    /** A fault of the file as a whole. */
    static Fault ofFile(Code code, String message) {
        return new Fault(0, "", "", code, message, List.of());
    }

    /** The sentence with its place in front: {@code Line 12, faults: there is no "hi pads"; ...}. */
    public String text() {
        if (line == 0) {
            return message;
        }
        return "Line " + line + (column.isEmpty() ? "" : ", " + column) + ": " + message;
    }
}
