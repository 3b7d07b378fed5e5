package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** SubRip has no specification: what its readers agree upon, and what its writers get wrong. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SubRipTest {
    private static final String ONE = "00:00:01,500 --> 00:00:02,000";
    private static final String TWO = "00:00:03,000 --> 00:00:04,000";

    private static Told read(String... lines) {
        Told told = Told.of(String.join("\n", lines));
        assertThat(told.narration().format()).isEqualTo(Format.SRT);
        return told;
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n"})
    void lines_may_end_in_three_ways_behind_a_mark_of_byte_order(String end) {
        Told told =
                read("\uFEFF1" + end + ONE + end + "rip" + end + "dip" + end + end + "2" + end + TWO + end + "spin");
        assertThat(told.words()).containsExactly("rip\ndip", "spin");
        assertThat(told.ids()).containsExactly("1", "2");
        assertThat(told.times()).containsExactly("1.5-2.0", "3.0-4.0");
        assertThat(told.faults()).isEmpty();
    }

    @Test
    void full_stops_are_read_and_told_once() {
        Told told = read("1", ONE.replace(',', '.'), "rip", "", "2", TWO.replace(',', '.'), "spin");
        assertThat(told.times()).containsExactly("1.5-2.0", "3.0-4.0");
        assertThat(told.faults()).containsExactly("FULL_STOP 2");
    }

    @Test
    void digits_short_hours_and_none_are_read() {
        assertThat(read("1", "0:0:1,5 --> 1:02:03,04", "rip").times()).containsExactly("1.5-3723.04");
        assertThat(read("1", "01:02,000 --> 01:03,000", "rip").times()).containsExactly("62.0-63.0");
    }

    @Test
    void a_line_of_digits_is_a_number_only_before_a_time() {
        assertThat(read("1", ONE, "94", "rips").words()).containsExactly("94\nrips");
        assertThat(read("1", ONE, "94", "", "2", TWO, "94").words()).containsExactly("94", "94");
    }

    @Test
    void numbers_may_be_missing_or_stand_twice() {
        assertThat(read(ONE, "rip", "", TWO, "spin").words()).containsExactly("rip", "spin");
        assertThat(read("1", ONE, "rip", "", "1", TWO, "spin").ids()).containsExactly("1", "1");
    }

    @Test
    void a_blank_line_may_be_missing_or_too_many() {
        assertThat(read("1", ONE, "rip", "2", TWO, "spin").words()).containsExactly("rip", "spin");
        Told told = read("", "1", ONE, "rip", "", "", "dip", "", "", "2", TWO, "spin");
        assertThat(told.words()).containsExactly("rip\ndip", "spin");
        assertThat(told.faults()).containsExactly("BLANK_LINE_INSIDE 3");
    }

    @Test
    void coordinates_and_marks_are_left_out_and_other_signs_are_kept() {
        assertThat(read("1", ONE + "  X1:1 X2:2 Y1:3 Y2:4", "<i>nice</i> {\\an8}rip <b>a</b>")
                        .words())
                .containsExactly("nice rip a");
        assertThat(read("1", ONE, "<font color=\"red\">pads</font> < knees {now} <v A>")
                        .words())
                .containsExactly("pads < knees {now} <v A>");
    }

    @Test
    void an_end_before_the_start_is_told() {
        Told told = read("1", "00:00:05,000 --> 00:00:01,000", "rip");
        assertThat(told.times()).containsExactly("5.0-?");
        assertThat(told.faults()).containsExactly("END_BEFORE_START 2");
    }

    @Test
    void a_file_may_end_anywhere() {
        assertThat(read("1", ONE, "rip").words()).containsExactly("rip");
        assertThat(read("1", ONE, "rip", "").words()).containsExactly("rip");
        assertThat(read("1", ONE).words()).containsExactly("");
        assertThat(read("1", ONE, "rip", "", "2").words()).containsExactly("rip\n2");
    }

    @Test
    void the_signature_of_webvtt_counts_more_than_the_name_of_the_file() {
        Told told = new Told(Narrations.read(
                "friday.srt", "WEBVTT\n\n00:01.000 --> 00:02.000\nrip".getBytes(StandardCharsets.UTF_8)));
        assertThat(told.narration().format()).isEqualTo(Format.WEBVTT);
        assertThat(told.words()).containsExactly("rip");
    }

    @Test
    void words_under_a_broken_time_are_kept_without_one() {
        Told told = read("1", ONE, "rip", "", "2", "00:00:xx,000 --> 00:00:04,000", "spin", "", "3", TWO, "chop");
        assertThat(told.words()).containsExactly("rip", "spin", "chop");
        assertThat(told.times()).containsExactly("1.5-2.0", "?-?", "3.0-4.0");
        assertThat(told.faults()).containsExactly("BAD_TIMING 6");
    }

    @Test
    void an_arrow_between_words_is_no_time() {
        assertThat(read("1", ONE, "rip --> spin").words()).containsExactly("rip --> spin");
    }

    @Test
    void other_lines_may_stand_above_the_first_block() {
        Told told = read("Film of Friday", "with Dana", "", "1", ONE, "rip");
        assertThat(told.words()).containsExactly("rip");
        assertThat(told.faults()).containsExactly("NO_TIMING 1", "NO_TIMING 2");
    }
}
