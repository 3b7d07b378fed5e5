package rushlight.web;

import java.util.List;
import java.util.Optional;

/**
 * What a file holds, or what came of importing it.
 *
 * @param file its name
 * @param kind {@code film-log} or {@code prospects}
 * @param imported whether anything was kept
 * @param readings readings without a fault
 * @param came readings that are there now
 * @param went readings that were there before
 * @param prospects prospects told of
 * @param logs what it does, or did, to each log
 * @param faults what must be put right
 * @param warnings oddities that stop nothing
 * @param header the header of the rows with a fault
 * @param badRows the rows with a fault as they stand; the first thousand
 * @param badCsv all of them with a column of reasons, as CSV
 * @param reasons why it does not go with what the folder holds
 * @param revision number of the change
 */
public record ImportReport(
        String file,
        String kind,
        boolean imported,
        int readings,
        int came,
        int went,
        int prospects,
        List<OfLog> logs,
        List<FaultAnswer> faults,
        List<FaultAnswer> warnings,
        List<String> header,
        List<BadRow> badRows,
        Optional<String> badCsv,
        List<String> reasons,
        long revision) {
    /** One log: readings before and after. */
    public record OfLog(String evaluator, String prospect, String game, int before, int after) {}

    /** A row with a fault. */
    public record BadRow(int line, List<String> cells) {}
}
