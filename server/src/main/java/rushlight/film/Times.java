package rushlight.film;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times on the film and on the game clock, each in the one form in which two spellings are equal. */
public final class Times {
    private static final Pattern FILM =
            Pattern.compile("(?:(?:(\\d{1,3}):)?(\\d{1,3}):)?(\\d{1,6}(?:\\.\\d{1,6})?)", Pattern.UNICODE_CASE);
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})");
    private static final BigDecimal MINUTE = BigDecimal.valueOf(60);
    private static final BigDecimal HOUR = BigDecimal.valueOf(3600);

    private Times() {}

    /** The seconds of a time written {@code h:mm:ss.s}, {@code m:ss} or in seconds; empty where it is none. */
    public static OptionalDouble seconds(String text) {
        return exact(text).map(s -> OptionalDouble.of(s.doubleValue())).orElseGet(OptionalDouble::empty);
    }

    /** The same time as {@code m:ss}, {@code m:ss.s} or {@code h:mm:ss}; empty where the text is no time. */
    public static Optional<String> film(String text) {
        return exact(text).map(Times::written);
    }

    /** The same game clock as {@code m:ss}; empty where the text is no clock. */
    public static Optional<String> clock(String text) {
        Matcher parts = CLOCK.matcher(text);
        if (!parts.matches() || Integer.parseInt(parts.group(2)) > 59 || Integer.parseInt(parts.group(1)) > 59) {
            return Optional.empty();
        }
        return Optional.of(Integer.parseInt(parts.group(1)) + ":" + parts.group(2));
    }

    private static Optional<BigDecimal> exact(String text) {
        Matcher parts = FILM.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        BigDecimal seconds = new BigDecimal(parts.group(3));
        if (parts.group(2) == null) {
            return Optional.of(seconds);
        }
        BigDecimal minutes = new BigDecimal(parts.group(2));
        int point = parts.group(3).indexOf('.');
        boolean twoDigits = (point < 0 ? parts.group(3).length() : point) == 2;
        boolean wholeSeconds = twoDigits && seconds.compareTo(MINUTE) < 0;
        boolean wholeMinutes =
                parts.group(1) == null || (parts.group(2).length() == 2 && minutes.compareTo(MINUTE) < 0);
        if (!wholeSeconds || !wholeMinutes) {
            return Optional.empty();
        }
        BigDecimal hours = parts.group(1) == null ? BigDecimal.ZERO : new BigDecimal(parts.group(1));
        return Optional.of(hours.multiply(HOUR).add(minutes.multiply(MINUTE)).add(seconds));
    }

    private static String written(BigDecimal total) {
        BigDecimal[] hours = total.divideAndRemainder(HOUR);
        BigDecimal[] minutes = hours[1].divideAndRemainder(MINUTE);
        BigDecimal seconds = minutes[1].stripTrailingZeros();
        String padded = (seconds.compareTo(BigDecimal.TEN) < 0 ? "0" : "") + seconds.toPlainString();
        return hours[0].signum() == 0
                ? minutes[0].intValue() + ":" + padded
                : hours[0].intValue() + ":" + String.format("%02d", minutes[0].intValue()) + ":" + padded;
    }
}
