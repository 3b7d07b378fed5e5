package rushlight.film.csv;

import java.util.List;
import rushlight.film.Log;

/** What came of reading a film log. */
public sealed interface ReadResult {
    /** Oddities that stop nothing. */
    List<Fault> warnings();

    /**
     * Every row can be used.
     *
     * @param logs the logs of the file, in order of their first row
     * @param warnings oddities that stop nothing
     */
    record Accepted(List<Log> logs, List<Fault> warnings) implements ReadResult {
        public Accepted {
            logs = List.copyOf(logs);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Something must be put right; nothing is imported unless the good rows are asked for.
     *
     * @param faults every fault of the file, in order of its lines
     * @param warnings oddities that stop nothing
     * @param good logs of the rows without a fault; none where the file as a whole or its header is at fault
     * @param badRows the other rows, to be written back with their reasons
     */
    record Rejected(List<Fault> faults, List<Fault> warnings, List<Log> good, BadRows badRows) implements ReadResult {
        public Rejected {
            faults = List.copyOf(faults);
            warnings = List.copyOf(warnings);
            good = List.copyOf(good);
        }
    }
}
