package rushlight.report;

import java.util.ArrayList;
import java.util.List;
import rushlight.film.Prospect;

/** A prospect's measures as scouts write them: feet and inches, pounds. */
public final class Bodies {
    private static final double CM_PER_INCH = 2.54;
    private static final double KG_PER_POUND = 0.45359237;

    private Bodies() {}

    /** Position, team, year and measures with commas between them; what is not known is left out. */
    public static String of(Prospect who) {
        List<String> parts = new ArrayList<>();
        add(parts, who.position());
        add(parts, who.team());
        add(parts, who.classYear());
        who.heightCm().ifPresent(cm -> parts.add(feet(cm)));
        who.weightKg().ifPresent(kg -> parts.add(Math.round(kg / KG_PER_POUND) + " lb"));
        who.armCm().ifPresent(cm -> parts.add("arm " + inches(cm / CM_PER_INCH) + " in"));
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, String text) {
        if (!text.isEmpty()) {
            parts.add(text);
        }
    }

    private static String feet(double cm) {
        double inches = Math.round(4 * cm / CM_PER_INCH) / 4.0;
        int feet = (int) (inches / 12);
        return feet + " ft " + inches(inches - 12 * feet) + " in";
    }

    private static String inches(double value) {
        double rounded = Math.round(8 * value) / 8.0;
        return rounded == Math.rint(rounded) ? Long.toString(Math.round(rounded)) : Double.toString(rounded);
    }
}
