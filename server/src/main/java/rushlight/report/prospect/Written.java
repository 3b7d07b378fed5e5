package rushlight.report.prospect;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the evaluator puts into a report.
 *
 * @param summary his own words, a paragraph a line; empty where he wrote none
 * @param author who wrote it; may be empty
 * @param day when, in universal time; empty where nothing was written
 * @param parts the parts wanted, in his order
 */
public record Written(String summary, String author, Optional<LocalDate> day, List<Part> parts) {
    /** The longest summary that two pages have room for beside what always prints. */
    public static final int LONGEST = 1_500;

    /** Nobody wrote anything. */
    public static final Written NOTHING = new Written("", "", Optional.empty(), Part.all());

    public Written {
        parts = List.copyOf(parts);
    }
}
