package rushlight.web;

import java.util.List;
import java.util.Map;

/** What was changed, the newest first. */
public record ChangesAnswer(List<Item> changes) {
    /**
     * One change.
     *
     * @param when time of the change, UTC
     * @param kind {@code edit}, {@code add}, {@code remove}, {@code import}, {@code undo} or {@code other}
     * @param by name of the account it was made with; empty where there was none
     * @param undo whether anything of it can be taken back
     * @param undone whether it was taken back since
     * @param readings the first of the readings it took away or changed
     */
    public record Item(
            long revision,
            String when,
            String kind,
            String said,
            String by,
            boolean undo,
            boolean undone,
            List<Was> readings) {}

    /**
     * One reading of a change.
     *
     * @param before its cells before the change
     */
    public record Was(String prospect, String game, String rep, String evaluator, Map<String, String> before) {}
}
