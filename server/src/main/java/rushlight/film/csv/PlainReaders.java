package rushlight.film.csv;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Pattern;
import rushlight.film.Times;
import rushlight.knowledge.Column;

/** Readers of the values that need no knowledge: numbers, dates, times, text. */
final class PlainReaders {
    private static final int MOST_DIGITS = 6;
    private static final Pattern DIGITS = Pattern.compile("\\d{1," + MOST_DIGITS + "}");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    private PlainReaders() {}

    static ValueReader text() {
        return (text, notes) -> Optional.of(text);
    }

    static ValueReader integer(Column column) {
        return (text, notes) -> {
            String number = DIGITS.matcher(text).matches() ? Integer.toString(Integer.parseInt(text)) : "";
            boolean good = column.oneOf().isEmpty()
                    ? !number.isEmpty()
                    : column.oneOf().contains(number);
            if (good) {
                return Optional.of(number);
            }
            return refused(column, text, Fault.Code.NOT_A_NUMBER, noNumber(column, text), notes);
        };
    }

    private static String noNumber(Column column, String text) {
        if (!column.oneOf().isEmpty()) {
            return " does not go here; write " + Sentences.or(column.oneOf()) + ".";
        }
        return text.chars().allMatch(c -> c >= '0' && c <= '9')
                ? " is too large; a number here has no more than " + MOST_DIGITS + " digits."
                : " is no whole number; write digits only, such as 7.";
    }

    static ValueReader date(Column column) {
        String message = " is no date; write year, month and day, such as 2025-09-05.";
        return (text, notes) ->
                isDay(text) ? Optional.of(text) : refused(column, text, Fault.Code.NOT_A_DATE, message, notes);
    }

    static ValueReader clock(Column column) {
        String message = " is no game clock; write minutes and seconds, such as 9:40.";
        return (text, notes) ->
                Times.clock(text).or(() -> refused(column, text, Fault.Code.NOT_A_CLOCK, message, notes));
    }

    static ValueReader time(Column column) {
        String message = " is no time on the film; write 1:02:03.5, 12:40 or seconds.";
        return (text, notes) -> Times.film(text).or(() -> refused(column, text, Fault.Code.NOT_A_TIME, message, notes));
    }

    private static boolean isDay(String text) {
        try {
            return DAY.matcher(text).matches() && LocalDate.parse(text).getYear() > 0;
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    private static Optional<String> refused(
            Column column, String text, Fault.Code code, String message, RowNotes notes) {
        notes.fault(column.name(), text, code, "\"" + text + "\"" + message);
        return Optional.empty();
    }
}
