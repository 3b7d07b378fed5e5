package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class CellFaultsTest {
    static Stream<Arguments> cells() {
        return Stream.of(
                cell("phase", "rush", "there is no \"rush\"; write pass-rush, run or drop."),
                cell("phase", "", "every row needs a value here. Write pass-rush, run or drop."),
                cell("rep", "", "every row needs a value here."),
                cell("rep", "--", "\"--\" has no letter and no digit, so it makes no address; number the reps."),
                cell("prospect", "???", "\"???\" has no letter and no digit, so it makes no address; give it a name."),
                cell("game", "?", "\"?\" has no letter and no digit, so it makes no address; give it a name."),
                cell("quarter", "0", "\"0\" does not go here; write 1, 2, 3, 4, 5, 6, 7, 8 or 9."),
                cell("down", "5", "\"5\" does not go here; write 1, 2, 3 or 4."),
                cell("bodies_taken", "3", "\"3\" does not go here; write 1 or 2."),
                cell("snap", "12th", "\"12th\" is no whole number; write digits only, such as 7."),
                cell("distance", "-2", "\"-2\" is no whole number; write digits only, such as 7."),
                cell(
                        "distance",
                        "99999999999",
                        "\"99999999999\" is too large; a number here has no more than 6 digits."),
                cell("date", "9/5/2025", "\"9/5/2025\" is no date; write year, month and day, such as 2025-09-05."),
                cell("date", "2025-02-30", "\"2025-02-30\" is no date; write year, month and day, such as 2025-09-05."),
                cell("clock", "14:75", "\"14:75\" is no game clock; write minutes and seconds, such as 9:40."),
                cell("start", "0:61", "\"0:61\" is no time on the film; write 1:02:03.5, 12:40 or seconds."),
                cell(
                        "stance",
                        "two-point;three-point",
                        "this column takes one value, and the cell lists more: \"two-point;three-point\"."),
                cell("result", "wn", "there is no \"wn\"; write won, even or lost."),
                cell("numbering", "E", "there is no \"E\"; write A, B, C or D."),
                cell("not_seen", "fautls", "there is no \"fautls\"; did you mean faults, feet or date?"),
                cell(
                        "note",
                        "bell\u0007",
                        "a control character (number 7) stands at place 5 of the cell; take it out."),
                cell("results", "high pads", "\"high pads\" belongs in the column faults."),
                cell("blocker", "tackel", "there is no \"tackel\"; did you mean tackle, back or left tackle?"),
                cell(
                        "chances",
                        "finnish",
                        "there is no \"finnish\"; did you mean finish chance, "
                                + "blind-side finish chance or not home?"));
    }

    @ParameterizedTest
    @MethodSource("cells")
    void says_what_was_found_and_what_is_right(String column, String value, String message) {
        ReadResult result = SmallLog.row(column, value).read();

        assertThat(SmallLog.faults(result)).containsExactly("Line 2, " + column + ": " + message);
    }

    @Test
    void a_fault_is_a_value_for_programs_too() {
        ReadResult.Rejected result =
                (ReadResult.Rejected) SmallLog.row("faults", "hi pads").read();

        Fault fault = result.faults().get(0);
        assertThat(fault.line()).isEqualTo(2);
        assertThat(fault.column()).isEqualTo("faults");
        assertThat(fault.value()).isEqualTo("hi pads");
        assertThat(fault.code().slug()).isEqualTo("unknown-label");
        assertThat(fault.nearest()).hasSize(3).startsWith("high pads");
        assertThat(fault.text()).startsWith("Line 2, faults: there is no \"hi pads\"; did you mean high pads, ");
    }

    @Test
    void every_wrong_value_of_a_list_is_told() {
        ReadResult result =
                SmallLog.row("faults", "high pads;hgih pads;late hnads").read();

        assertThat(SmallLog.faults(result))
                .hasSize(2)
                .anyMatch(text -> text.contains("\"hgih pads\"; did you mean high pads"))
                .anyMatch(text -> text.contains("\"late hnads\"; did you mean late hands"));
    }

    @Test
    void all_faults_of_all_rows_come_at_once() {
        ReadResult result = SmallLog.row("down", "5", "phase", "rush")
                .and()
                .and("clock", "noon")
                .read();

        assertThat(SmallLog.faults(result))
                .extracting(text -> text.substring(0, text.indexOf(':')))
                .containsExactlyInAnyOrder("Line 2, phase", "Line 2, down", "Line 4, clock");
    }

    @Test
    void a_rep_cannot_end_before_it_starts() {
        assertThat(SmallLog.faults(SmallLog.row("start", "0:20", "end", "10").read()))
                .containsExactly("Line 2, end: the rep ends at 0:10, before it starts at 0:20.");
    }

    @Test
    void a_duty_that_is_given_is_known_to_somebody() {
        assertThat(SmallLog.faults(SmallLog.row("assignment", "spill assignment", "assignment_source", "unknown")
                        .read()))
                .containsExactly("Line 2, assignment_source: the duty spill-assignment is given, so somebody knows it;"
                        + " write stated or inferred, or leave the duty blank.");
    }

    @Test
    void a_source_without_a_duty_is_read_as_unknown_and_told() {
        ReadResult result = SmallLog.row("assignment", "assignment-unknown", "assignment_source", "stated")
                .read();

        assertThat(SmallLog.warnings(result))
                .containsExactly("Line 2, assignment_source: no duty is given, so \"stated\" was read as unknown.");
        assertThat(((ReadResult.Accepted) result)
                        .logs()
                        .get(0)
                        .readings()
                        .get(0)
                        .one("assignment_source"))
                .contains("unknown");
    }

    @Test
    void a_blocker_from_the_other_side_is_odd_but_kept() {
        ReadResult result = SmallLog.row("over", "right", "blocker", "LT")
                .and("over", "right", "blocker", "left-tackle")
                .and("over", "right", "blocker", "left-guard")
                .read();

        assertThat(result).isInstanceOf(ReadResult.Accepted.class);
        assertThat(SmallLog.warnings(result))
                .containsExactly("Line 2, blocker: \"left-tackle\" is odd beside over = right; both were kept."
                        + " (And in 1 more row.)");
    }

    private static Arguments cell(String column, String value, String message) {
        return Arguments.of(column, value, message);
    }
}
