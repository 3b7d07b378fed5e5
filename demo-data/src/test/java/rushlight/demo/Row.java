package rushlight.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One rep as it is being charted: the cells of a film log, and its lists. */
final class Row {
    static final List<String> COLUMNS = List.of(
            ("rep prospect game date level opponent quarter clock down distance snap video start end phase play direction"
                            + " over alignment numbering stance surface assignment assignment_source gap hash blocker help"
                            + " exchange get_off second_move_time hand_cleared hip_cleared how_won movement first_contact shed"
                            + " depth_at_contact bodies_taken ball_reach faults chances results result not_seen evaluator"
                            + " confidence note")
                    .split(" ", -1));

    final List<String> exchange = new ArrayList<>();
    final Set<String> help = new LinkedHashSet<>();
    final Set<String> faults = new LinkedHashSet<>();
    final Set<String> chances = new LinkedHashSet<>();
    final Set<String> results = new LinkedHashSet<>();
    final Set<String> topics = new LinkedHashSet<>();
    private final Map<String, String> cells = new LinkedHashMap<>();

    Row() {
        COLUMNS.forEach(column -> cells.put(column, ""));
    }

    String get(String column) {
        return cells.getOrDefault(column, "");
    }

    Row set(String column, Object value) {
        if (!cells.containsKey(column)) {
            throw new IllegalArgumentException("The film log has no column '" + column + "'");
        }
        cells.put(column, value.toString());
        return this;
    }

    /** His next steps, in order. */
    Row his(String... steps) {
        exchange.addAll(List.of(steps));
        return this;
    }

    /** Takes faults back, and what was said of them. */
    Row withdraw(Set<String> untagged) {
        faults.removeAll(untagged);
        topics.removeAll(untagged);
        return this;
    }

    /** The blocker's next step. */
    Row blocker(String step) {
        exchange.add("[" + step + "]");
        return this;
    }

    Row fault(String fault) {
        if (!fault.equals("none")) {
            faults.add(fault);
            topics.add(fault);
        }
        return this;
    }

    Row ended(String outcome, String... results) {
        set("result", outcome);
        this.results.addAll(List.of(results));
        return this;
    }

    Row copy() {
        Row copy = new Row();
        copy.cells.putAll(cells);
        copy.exchange.addAll(exchange);
        copy.help.addAll(help);
        copy.faults.addAll(faults);
        copy.chances.addAll(chances);
        copy.results.addAll(results);
        return copy;
    }

    boolean won() {
        return get("result").equals("won");
    }

    List<String> values() {
        set("exchange", String.join(" > ", exchange));
        set("help", String.join(";", help));
        set("faults", String.join(";", faults));
        set("chances", String.join(";", chances));
        set("results", String.join(";", results));
        return COLUMNS.stream().map(this::get).toList();
    }
}
