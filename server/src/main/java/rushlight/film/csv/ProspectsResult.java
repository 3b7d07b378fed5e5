package rushlight.film.csv;

import java.util.List;
import rushlight.film.Prospect;

/** What came of reading a list of prospects. */
public sealed interface ProspectsResult {
    /** Oddities that stop nothing. */
    List<Fault> warnings();

    /**
     * Every row can be used.
     *
     * @param prospects in the order of the file
     * @param warnings oddities that stop nothing
     */
    record Accepted(List<Prospect> prospects, List<Fault> warnings) implements ProspectsResult {
        public Accepted {
            prospects = List.copyOf(prospects);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Something must be put right.
     *
     * @param faults every fault of the file, in order of its lines
     * @param warnings oddities that stop nothing
     */
    record Rejected(List<Fault> faults, List<Fault> warnings) implements ProspectsResult {
        public Rejected {
            faults = List.copyOf(faults);
            warnings = List.copyOf(warnings);
        }
    }
}
