package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines that begin with a time, as people type them, and texts without any. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TimedLinesTest {
    private static Told read(String... lines) {
        Told told = Told.of(String.join("\n", lines));
        assertThat(told.narration().format()).isEqualTo(Format.PLAIN);
        return told;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        [1:02] rip        | 62.0-?
        [1:01:02] rip     | 3662.0-?
        [1:02.5] rip      | 62.5-?
        [1:02-1:09] rip   | 62.0-69.0
        [1:02 - 1:09] rip | 62.0-69.0
        [1:02–1:09] rip   | 62.0-69.0
        1:02 rip          | 62.0-?
        (1:02) rip        | 62.0-?
        1:02 - rip        | 62.0-?
        [1:02] - rip      | 62.0-?
        1:02 — rip        | 62.0-?
        [1:02]rip         | 62.0-?
        [101:02] rip      | 6062.0-?
        """)
    void a_time_may_be_written_in_many_ways(String line, String time) {
        assertThat(read(line).words()).containsExactly("rip");
        assertThat(read(line).times()).containsExactly(time);
        assertThat(read(line).faults()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"[3rd & 8] rip", "third and 2:30 left, rip", "5 technique, rip", "2-4 rip", "1:2 rip"})
    void other_figures_are_no_time(String line) {
        assertThat(read(line).words()).containsExactly(line);
        assertThat(read(line).times()).containsExactly("?-?");
    }

    @Test
    void a_cue_ends_where_the_next_begins_and_lines_without_a_time_belong_to_the_one_above() {
        Told told = read("[0:01] rip", "and dip", "[0:05] spin", "", "[0:09] chop");
        assertThat(told.words()).containsExactly("rip and dip", "spin", "chop");
        assertThat(told.times()).containsExactly("1.0-5.0", "5.0-9.0", "9.0-?");
    }

    @Test
    void words_before_any_time_or_behind_a_blank_line_are_kept_and_told() {
        Told told = read("Friday", "[0:01] rip", "", "dip", "[0:05] spin");
        assertThat(told.words()).containsExactly("Friday", "rip", "dip", "spin");
        assertThat(told.times()).containsExactly("?-?", "1.0-?", "?-?", "5.0-?");
        assertThat(told.faults()).containsExactly("NO_TIMING 1", "NO_TIMING 4");
    }

    @Test
    void a_time_that_is_none_is_told_and_its_words_are_kept() {
        Told told = read("[0:01] rip", "[0:75] dip", "[0:09] spin");
        assertThat(told.words()).containsExactly("rip", "[0:75] dip", "spin");
        assertThat(told.faults()).containsExactly("BAD_TIMING 2");
    }

    @Test
    void times_that_run_back_are_told_and_the_order_is_kept() {
        Told told = read("[0:05] rip", "[0:01] dip");
        assertThat(told.words()).containsExactly("rip", "dip");
        assertThat(told.times()).containsExactly("5.0-?", "1.0-?");
        assertThat(told.faults()).containsExactly("TIME_RUNS_BACK 2");
    }

    @Test
    void a_remark_is_left_out_and_the_number_of_a_shirt_is_none() {
        assertThat(read("# chop", "[0:01] rip", "#spin", "#94 dips").words()).containsExactly("rip #94 dips");
    }

    @Test
    void a_text_without_times_is_one_cue() {
        Told told = read("He rips.", "", "Then he spins.");
        assertThat(told.words()).containsExactly("He rips.\nThen he spins.");
        assertThat(told.times()).isEqualTo(List.of("?-?"));
        assertThat(told.faults()).isEmpty();
    }

    @Test
    void a_line_may_hold_a_separator_of_unicode() {
        assertThat(read("[0:01] rip\u2028dip\u0085spin").times()).containsExactly("1.0-?");
    }
}
