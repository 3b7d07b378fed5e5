package rushlight.film.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A measure of the body that may be given in one unit or two.
 *
 * @param name what it is called in a sentence
 * @param columns the columns that can hold it, the one it is kept in first where that is one of them
 * @param units how much of the kept unit one of each column's unit is
 * @param unitNames the units as they are called
 * @param apart how far two given values may differ, in the kept unit
 * @param least what nobody is below, in the kept unit
 * @param usualLeast what few are below
 * @param usualMost what few are above
 * @param most what nobody is above
 */
record Measure(
        String name,
        List<String> columns,
        List<String> units,
        List<String> unitNames,
        String apart,
        double least,
        double usualLeast,
        double usualMost,
        double most) {
    static final Measure HEIGHT = new Measure(
            "height",
            List.of("height_cm", "height_in"),
            List.of("1", "2.54"),
            List.of("centimeters", "inches"),
            "1.3",
            120,
            165,
            211,
            230);
    static final Measure WEIGHT = new Measure(
            "weight",
            List.of("weight_kg", "weight_lb"),
            List.of("1", "0.45359237"),
            List.of("kilograms", "pounds"),
            "0.6",
            40,
            75,
            160,
            230);
    static final Measure ARM =
            new Measure("arm length", List.of("arm_in"), List.of("2.54"), List.of("inches"), "0", 50, 73, 95, 115);

    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}(\\.\\d{1,6})?");
    private static final int DIGITS = 6;

    /** The value in the kept unit; empty where no cell holds one. */
    OptionalDouble read(Map<String, String> cells, RowNotes notes) {
        Optional<BigDecimal> first = Optional.empty();
        for (int i = 0; i < columns.size(); i++) {
            Optional<BigDecimal> value = one(i, cells.getOrDefault(columns.get(i), ""), notes);
            if (first.isPresent() && value.isPresent()) {
                compare(first.get(), value.get(), i, cells, notes);
            }
            first = first.or(() -> value);
        }
        return first.map(value -> OptionalDouble.of(value.doubleValue())).orElseGet(OptionalDouble::empty);
    }

    /** The value as it stands in the first column. */
    String written(OptionalDouble value) {
        return value.isEmpty()
                ? ""
                : BigDecimal.valueOf(value.getAsDouble())
                        .divide(new BigDecimal(units.get(0)), DIGITS, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private Optional<BigDecimal> one(int place, String cell, RowNotes notes) {
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        String column = columns.get(place);
        String unit = unitNames.get(place);
        if (!NUMBER.matcher(cell).matches()) {
            notes.fault(
                    column,
                    cell,
                    Fault.Code.NOT_A_NUMBER,
                    "\"" + cell + "\" is no number of " + unit + "; write digits, with a point for parts.");
            return Optional.empty();
        }
        BigDecimal value = new BigDecimal(cell).multiply(new BigDecimal(units.get(place)));
        double kept = value.doubleValue();
        if (kept < least || kept > most) {
            notes.fault(
                    column,
                    cell,
                    Fault.Code.IMPLAUSIBLE,
                    cell + " " + unit + " is no " + name + " of a man; look at the unit of the column.");
        } else if (kept < usualLeast || kept > usualMost) {
            notes.warn(
                    column, cell, Fault.Code.IMPLAUSIBLE, cell + " " + unit + " is a rare " + name + "; it was kept.");
        }
        return Optional.of(value);
    }

    private void compare(BigDecimal first, BigDecimal second, int place, Map<String, String> cells, RowNotes notes) {
        if (first.subtract(second).abs().compareTo(new BigDecimal(apart)) <= 0) {
            return;
        }
        String one = cells.getOrDefault(columns.get(0), "") + " " + unitNames.get(0);
        String other = cells.getOrDefault(columns.get(place), "") + " " + unitNames.get(place);
        notes.fault(
                columns.get(place),
                cells.getOrDefault(columns.get(place), ""),
                Fault.Code.UNITS_DISAGREE,
                "a " + name + " of " + one + " is not " + other + "; keep the one that is right.");
    }
}
