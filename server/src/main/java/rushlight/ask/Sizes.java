package rushlight.ask;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rushlight.words.Lexicon;
import rushlight.words.Token;

/** Finds how tall or heavy a question says a man is: a number with a unit, or feet and inches such as 6-4. */
final class Sizes {
    private static final Pattern MARKED = Pattern.compile("([4-7])['\u2019](1[01]|\\d)?");
    private static final double INCH = 2.54;
    private static final int INCHES = 12;

    /**
     * A size that stands in a question.
     *
     * @param size what it is
     * @param end the token behind it
     */
    record Found(Sense.Size size, int end) {}

    private record Unit(String measure, double of) {}

    private final Map<String, Unit> units = new HashMap<>();

    Sizes() {
        for (List<String> row :
                Lexicon.named("sizes", "unit", "measure", "size").rows()) {
            units.put(row.get(0), new Unit(row.get(1), Double.parseDouble(row.get(2))));
        }
    }

    /** The size that begins at this token. */
    Optional<Found> at(List<Token> tokens, int at, String question) {
        Matcher marked = MARKED.matcher(tokens.get(at).text());
        if (marked.matches()) {
            int inches = marked.group(2) == null ? 0 : Integer.parseInt(marked.group(2));
            return Optional.of(height(Integer.parseInt(marked.group(1)), inches, at + 1));
        }
        if (!tokens.get(at).isNumber()) {
            return Optional.empty();
        }
        int number = tokens.get(at).number();
        if (isFeetAndInches(tokens, at, question)) {
            return Optional.of(height(number, tokens.get(at + 1).number(), at + 2));
        }
        return unit(tokens, at + 1).map(unit -> measured(tokens, at, unit));
    }

    /** Whether words from one token up to another have a part of a size among them. */
    boolean isAmong(List<Token> tokens, String question, int first, int end) {
        for (int at = 0; at < end; at++) {
            Optional<Found> found = at(tokens, at, question);
            if (found.isPresent() && found.get().end() > first) {
                return true;
            }
            at = found.map(f -> f.end() - 1).orElse(at);
        }
        return false;
    }

    private Found measured(List<Token> tokens, int at, Unit unit) {
        int end = at + 2;
        while (unit(tokens, end).filter(unit::equals).isPresent()) {
            end++;
        }
        double size = tokens.get(at).number() * unit.of();
        boolean more = end < tokens.size() && tokens.get(end).isNumber() && unit.of() == INCHES * INCH;
        if (more && tokens.get(end).number() < INCHES) {
            size += tokens.get(end).number() * INCH;
            end += unit(tokens, end + 1).filter(u -> u.of() == INCH).isPresent() ? 2 : 1;
        }
        return new Found(new Sense.Size(measure(unit), size), end);
    }

    private static Optional<ManSize.Measure> measure(Unit unit) {
        for (ManSize.Measure measure : ManSize.Measure.values()) {
            if (measure.slug().equals(unit.measure())) {
                return Optional.of(measure);
            }
        }
        return Optional.empty();
    }

    /** "6-4": a hyphen between what could be feet and what could be inches. */
    private static boolean isFeetAndInches(List<Token> tokens, int at, String question) {
        if (at + 1 >= tokens.size() || !tokens.get(at + 1).isNumber()) {
            return false;
        }
        Token feet = tokens.get(at);
        Token inches = tokens.get(at + 1);
        return inches.from() - feet.to() == 1
                && question.charAt(feet.to()) == '-'
                && feet.number() >= 5
                && feet.number() <= 7
                && inches.number() < INCHES;
    }

    private static Found height(int feet, int inches, int end) {
        double size = (feet * INCHES + inches) * INCH;
        return new Found(new Sense.Size(Optional.of(ManSize.Measure.HEIGHT), size), end);
    }

    private Optional<Unit> unit(List<Token> tokens, int at) {
        return at < tokens.size()
                ? Optional.ofNullable(units.get(tokens.get(at).text().toLowerCase(Locale.ROOT)))
                : Optional.empty();
    }
}
