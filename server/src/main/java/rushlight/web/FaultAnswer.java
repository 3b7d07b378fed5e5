package rushlight.web;

import java.util.List;
import rushlight.film.csv.Fault;

/**
 * Something in a row or a file that a person must look at.
 *
 * @param line line of the file, from 1; 0 for the file as a whole or a single row
 * @param column the column, or empty where it is about the row
 * @param value what stands there
 * @param code what kind of fault it is
 * @param message what was found and what would be right
 * @param nearest what may have been meant, the likeliest first
 */
public record FaultAnswer(int line, String column, String value, String code, String message, List<String> nearest) {
    /** A fault of a file. */
    public static FaultAnswer of(Fault fault) {
        return new FaultAnswer(
                fault.line(), fault.column(), fault.value(), fault.code().slug(), fault.message(), fault.nearest());
    }

    /** Faults of a file, in their order. */
    public static List<FaultAnswer> of(List<Fault> faults) {
        return faults.stream().map(FaultAnswer::of).toList();
    }
}
