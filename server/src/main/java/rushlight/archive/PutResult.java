package rushlight.archive;

import java.util.List;
import rushlight.film.LogId;

/** What came of putting logs into a data folder. */
public sealed interface PutResult {
    /**
     * Everything is stored and can be counted.
     *
     * @param logs what happened to each log, in the order given
     */
    record Stored(List<Replaced> logs) implements PutResult {
        public Stored {
            logs = List.copyOf(logs);
        }

        /** One sentence for people. */
        public String said() {
            int readings = logs.stream().mapToInt(Replaced::after).sum();
            return "Imported " + readings + (readings == 1 ? " reading in " : " readings in ") + logs.size()
                    + (logs.size() == 1 ? " log." : " logs.");
        }
    }

    /**
     * Nothing was stored, because the logs do not go with what the folder already holds.
     *
     * @param reasons one sentence each
     */
    record Refused(List<String> reasons) implements PutResult {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * One log in the place of what was there.
     *
     * @param log which log
     * @param before readings that went, 0 where the log is new
     * @param after readings that are there now
     */
    record Replaced(LogId log, int before, int after) {}
}
