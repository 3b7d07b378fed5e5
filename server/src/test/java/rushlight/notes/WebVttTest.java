package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * WebVTT as the W3C's specification parses it ("WebVTT file parsing", "cue timings and settings", "cue text parsing
 * rules"). The cases follow those of web-platform-tests, webvtt/parsing; the tests name its files, the words are our own.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class WebVttTest {
    private static final String GOOD = "00:00:00.000 --> 00:00:01.000\n";

    private static Told cues(String... blocks) {
        return Told.of("WEBVTT\n\n" + String.join("\n\n", blocks));
    }

    private static Told cue(String payload) {
        return cues(GOOD + payload);
    }

    /** File-parsing: arrows. */
    @Test
    void a_line_with_an_arrow_ends_a_block_and_begins_the_next() {
        Told told = cues(
                "-->\n" + GOOD + "one",
                "foo-->\n" + GOOD + "two",
                "-->foo\n" + GOOD + "three",
                "--->\n" + GOOD + "four",
                "-->-->\n" + GOOD + "five\n" + GOOD + "six",
                "-->",
                "foo-->",
                "-->foo",
                "--->");
        assertThat(told.words()).containsExactly("one", "two", "three", "four", "five", "six");
        assertThat(told.faults())
                .hasSize(9)
                .allMatch(fault -> fault.startsWith("BAD_TIMING"))
                .contains("BAD_TIMING 3", "BAD_TIMING 7");
    }

    /** File-parsing: ids. */
    @Test
    void a_name_is_kept_as_it_stands() {
        List<String> ids = List.of(" leads", "trails ", "-- >", "->", " ");
        Told told = cues(ids.stream().map(id -> id + "\n" + GOOD + "x").toArray(String[]::new));
        assertThat(told.ids()).isEqualTo(ids);
        assertThat(told.faults()).isEmpty();
    }

    /** File-parsing: whitespace-chars. */
    @Test
    void blanks_tabs_and_form_feeds_may_stand_around_times_and_vertical_tabs_may_not() {
        Told told = cues(
                "   00:00:00.000   -->   00:00:01.000   \n   rip",
                "\t00:00:00.000\t-->\t00:00:01.000\t\nspin",
                "\f00:00:00.000\f-->\f00:00:01.000\f\nchop",
                "\u000B00:00:00.000\u000B-->\u000B00:00:01.000\u000B\ndip");
        assertThat(told.words()).containsExactly("   rip", "spin", "chop");
        assertThat(told.faults()).containsExactly("BAD_TIMING 12");
    }

    /** File-parsing: newlines. */
    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n"})
    void lines_may_end_in_three_ways(String end) {
        String file = "WEBVTT\n\nNOTE chop\n\none\n" + GOOD + "rip\nand dip\n\n" + GOOD + "spin\n";
        Told told = Told.of(file.replace("\n", end));
        assertThat(told.narration()).isEqualTo(Told.of(file).narration());
        assertThat(told.words()).containsExactly("rip\nand dip", "spin");
        assertThat(told.ids()).containsExactly("one", "");
    }

    @Test
    void a_line_feed_before_a_carriage_return_is_two_ends() {
        assertThat(Told.of("WEBVTT\n\r" + GOOD + "rip\n\rspin").words()).containsExactly("rip");
    }

    /** File-parsing: timings-too-short, timings-too-long, timings-60, timings-omitted-hours, timings-negative. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
        00:00:00.000 --> 00:00:01.000     , 0.0-1.0
        0:00:00.000 --> 0:00:01.000       , 0.0-1.0
        000:00:00.000 --> 000:00:01.000   , 0.0-1.0
        00:00.000 --> 00:01.000           , 0.0-1.0
        00:00:00.000 --> 00:01.000        , 0.0-1.0
        00:00.000 --> 00:00:01.000        , 0.0-1.0
        00:00.000-->00:01.000             , 0.0-1.0
        00:59:59.999 --> 60:00:01.000     , 3599.999-216001.0
        60:00:00.000 --> 60:00:01.000     , 216000.0-216001.0
        00:05.000 --> 00:01.000           , 5.0-?
        00:00.000 --> 00:01.000 align:start position:10% line:-1 foo:bar size:999%, 0.0-1.0
        0000:00.000 --> 00:01.000         , -
        00:0:00.000 --> 00:00:01.000      , -
        00:00:0.000 --> 00:00:01.000      , -
        00:00:00000 --> 00:00:01.000      , -
        00:00:00.00 --> 00:00:01.000      , -
        00:00:00 --> 00:00:01.000         , -
        0:00.000 --> 00:01.000            , -
        00::00:00.000 --> 00:00:01.000    , -
        00:000:00.000 --> 00:00:01.000    , -
        00:00:000.000 --> 00:00:01.000    , -
        00:00:00..000 --> 00:00:01.000    , -
        00:00:00.0000 --> 00:00:01.000    , -
        00:00.000 --> 00:01.0000          , -
        00:00.000 --> 000:01.000          , -
        00:60:00.000 --> 00:00:01.000     , -
        00:00:60.000 --> 00:00:01.000     , -
        60:00.000 --> 00:01.000           , -
        00:00:00.000 --> 00:00:60.000     , -
        -00:00:00.000 --> 00:00:01.000    , -
        00:00:00.000 --> -00:00:01.000    , -
        00:00.000 -> 00:01.000            , -
        foo00:00.000 --> 00:01.000        , -
        00:00.000 foo --> 00:01.000       , -
        00:00.000 -->                     , -
        """)
    void times_are_read_or_the_cue_is_left_out(String timing, @org.jspecify.annotations.Nullable String times) {
        Told told = cues(timing + "\nrip", GOOD + "spin");
        if (times == null) {
            assertThat(told.words()).containsExactly("spin");
            assertThat(told.faults()).hasSize(1);
        } else {
            assertThat(told.words()).containsExactly("rip", "spin");
            assertThat(told.times()).startsWith(times);
        }
    }

    /** File-parsing: timings-too-long; more digits than any number type holds. */
    @Test
    void a_time_longer_than_any_number_is_no_time() {
        assertThat(cues("9".repeat(5000) + ":00:00.000 --> 00:00:01.000\nrip").faults())
                .contains("BAD_TIMING 3");
    }

    @Test
    void an_end_before_the_start_is_told_and_times_that_run_back_are_too() {
        assertThat(cues("00:05.000 --> 00:01.000\nrip").faults()).containsExactly("END_BEFORE_START 3");
        Told told = cues("a\n00:05.000 --> 00:06.000\nrip", "a\n00:01.000 --> 00:02.000\nspin");
        assertThat(told.words()).containsExactly("rip", "spin");
        assertThat(told.faults()).containsExactlyInAnyOrder("SAME_ID 7", "TIME_RUNS_BACK 8");
    }

    @Test
    void commas_are_told_to_be_those_of_subrip() {
        assertThat(cues("00:00,000 --> 00:01,000\nrip").faults()).contains("LOOKS_LIKE_SRT 3");
    }

    /** File-parsing: nulls. */
    @Test
    void a_nul_is_shown_as_unknown_and_spoils_only_a_time() {
        Told told = cues(
                "a\0b\n" + GOOD + "rip\0ped",
                "00:00:00.000 --> 00:00:01.000 align:\0start\nspin",
                "00:00:00\0.000 --> 00:00:01.000\nchop");
        assertThat(told.words()).containsExactly("rip\uFFFDped", "spin");
        assertThat(told.ids()).containsExactly("a\uFFFDb", "");
        assertThat(told.faults()).containsExactly("BAD_TIMING 10");
    }

    /** File-parsing: signature-no-newline, -space, -space-no-newline, -tab, -tab-no-newline, -bom. */
    @ParameterizedTest
    @ValueSource(strings = {"WEBVTT", "WEBVTT\n", "WEBVTT ", "WEBVTT\t", "WEBVTT x\n", "WEBVTT\tx\n", "\uFEFFWEBVTT\n"})
    void the_signature_may_stand_alone(String file) {
        assertThat(Told.of(file).narration().format()).isEqualTo(Format.WEBVTT);
        assertThat(Told.of(file).faults()).containsExactly("NO_NOTES 1");
    }

    /** File-parsing: signature-invalid, signature-timings; our way on: nothing readable is lost. */
    @ParameterizedTest
    @ValueSource(strings = {"webvtt", " WEBVTT", "WEBVTTx", "\uFEFF\uFEFFWEBVTT"})
    void another_first_line_is_no_webvtt_and_its_cues_are_still_read(String first) {
        Told told = Told.of(first + "\n\n" + GOOD + "rip\n\n00:02.000 --> 00:03.000\nspin\n");
        assertThat(told.narration().format()).isNotEqualTo(Format.WEBVTT);
        assertThat(told.words()).containsExactly("rip", "spin");
        assertThat(told.times()).containsExactly("0.0-1.0", "2.0-3.0");
        assertThat(told.faults()).contains("NO_TIMING 1");
    }

    /** File-parsing: header-garbage, header-timings. */
    @Test
    void a_header_ends_at_a_blank_line_or_at_a_time() {
        assertThat(Told.of("WEBVTT\nKind: notes\n" + GOOD + "rip\n\n" + GOOD + "spin")
                        .words())
                .containsExactly("rip", "spin");
        assertThat(Told.of("WEBVTT\n" + GOOD + "rip").words()).containsExactly("rip");
        assertThat(Told.of("WEBVTT\nKind: notes\nrip\n\n" + GOOD + "spin").words())
                .containsExactly("spin");
    }

    /** File-parsing: stylesheets, regions-old. */
    @Test
    void remarks_styles_and_regions_are_no_words_wherever_they_stand() {
        Told told = cues(
                "STYLE\n::cue { color: red }",
                "REGION\nid:left",
                "NOTE rip",
                "NOTE\nspin\nchop",
                "NOTE\tdip",
                GOOD + "first",
                "NOTE swim",
                "STYLE\n::cue(b) {}",
                GOOD + "second");
        assertThat(told.words()).containsExactly("first", "second");
        assertThat(told.faults()).isEmpty();
    }

    @Test
    void a_payload_may_begin_with_note() {
        assertThat(cue("NOTE no remark\nsecond").words()).containsExactly("NOTE no remark\nsecond");
    }

    @Test
    void lines_without_a_time_are_told() {
        Told told = cues("rip and dip", GOOD + "spin");
        assertThat(told.words()).containsExactly("spin");
        assertThat(told.faults()).containsExactly("NO_TIMING 3");
    }

    /** File-parsing: timings-eof. */
    @ParameterizedTest
    @CsvSource({"'', ''", "'\n', ''", "'\nri', ri", "'\nri\n', ri"})
    void a_file_may_end_anywhere(String end, String words) {
        assertThat(Told.of("WEBVTT\n\n00:00.000 --> 00:01.000" + end).words()).containsExactly(words);
    }

    /** Cue-text-parsing: entities, tags, timestamps. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '~', textBlock = """
        &            | &
        &amp;        | &
        &lt;         | <
        &gt;         | >
        &lt;b&gt;    | <b>
        &amp;lt;     | &lt;
        a&lrm;b      | a\u200Eb
        a&rlm;b      | a\u200Fb
        a&nbsp;b     | a\u00A0b
        &quot;       | "
        &apos;       | '
        &#39;        | '
        &#x2019;     | \u2019
        &#x1F3C8;    | \uD83C\uDFC8
        &#146;       | \u2019
        &#0;         | \uFFFD
        &#xD800;     | \uFFFD
        &#9999999;   | \uFFFD
        &#999999999; | \uFFFD
        &nothing;    | &nothing;
        &&           | &&
        &;           | &;
        &<c          | &
        <v Dana>hi   | hi
        <v.loud Dana>hi</v> | hi
        <b.loud>x</b>       | x
        <00:00:01.000>x     | x
        <c>un               | un
        <c.a.b>x<i>y</c>z   | xyz
        <unknown>x</unknown>| x
        <ruby>a<rt>b</rt></ruby> | ab
        <>x                 | x
        </x                 | ~~
        a <b                | a
        3 > 2               | 3 > 2
        """, delimiter = '|')
    void marks_go_and_references_are_read(String payload, String words) {
        assertThat(cue(payload).words())
                .satisfiesExactly(said -> assertThat(said.replaceAll(" $", "")).isEqualTo(words));
    }

    @Test
    void a_sign_that_hides_the_rest_is_told() {
        Told told = cue("pads < knees here");
        assertThat(told.words()).containsExactly("pads ");
        assertThat(told.faults()).containsExactly("UNCLOSED_TAG_SWALLOWED_TEXT 4");
    }

    @Test
    void voices_are_kept_where_they_begin() {
        assertThat(cue("<v A>one <v.loud B &amp; C>two").narration().cues())
                .singleElement()
                .satisfies(said -> {
                    assertThat(said.text()).isEqualTo("one two");
                    assertThat(said.voices()).containsExactly(new Cue.Voice("A", 0), new Cue.Voice("B & C", 4));
                });
    }

    @Test
    void a_line_separator_of_unicode_is_no_end_of_a_line() {
        assertThat(Told.of("WEBVTT \u2028x\n\n00:00.000 --> 00:01.000 \u2028\nrip\u2028dip")
                        .words())
                .containsExactly("rip\u2028dip");
    }

    @Test
    void what_is_no_utf_8_is_told_with_its_line() {
        byte[] bytes = ("WEBVTT\n\n" + GOOD + "rip \u00E9").getBytes(StandardCharsets.ISO_8859_1);
        assertThat(Told.of(bytes).words()).containsExactly("rip \uFFFD");
        assertThat(Told.of(bytes).faults()).containsExactly("NOT_UTF_8 4");
        assertThat(cue("rip \uFFFD").faults()).isEmpty();
    }
}
