package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a file holds, it is read without a fault of ours, in good time, and its cues are where they say they are. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AnyFileTest {
    private static final String[] PIECES = {
        "WEBVTT",
        "\n",
        "\n\n",
        "\r",
        "\r\n",
        "00:00:01.000 --> 00:00:02.000",
        "00:00:01,000 --> 00:00:02,000",
        "-->",
        "00:01.000",
        "[0:05]",
        "(1:02)",
        "1:02 - ",
        "[0:75]",
        "7",
        "<v Dana>",
        "<",
        ">",
        "</i>",
        "{\\an8}",
        "&amp;",
        "&#9999999;",
        "&#xD800;",
        "&",
        "NOTE",
        "STYLE",
        "rip",
        " and he dips",
        "\0",
        "\uFEFF",
        "\u2028",
        "\uFFFD",
        "#",
        "9".repeat(30),
        ":",
        ".000",
        "\t",
        "\f",
        "\u000B",
        "\uD83C\uDFC8"
    };

    private static void holdsTogether(Narration read) {
        String joined = read.cues().stream().map(Cue::text).collect(Collectors.joining("\n"));
        assertThat(read.text()).isEqualTo(joined);
        assertThat(read.cues())
                .allSatisfy(cue ->
                        assertThat(read.text().substring(cue.from(), cue.to())).isEqualTo(cue.text()))
                .allSatisfy(cue -> assertThat(cue.voices())
                        .allSatisfy(voice ->
                                assertThat(voice.from()).isBetween(0, cue.text().length())));
        assertThat(IntStream.range(0, read.cues().size()))
                .allSatisfy(i -> assertThat(read.cues().get(i).number()).isEqualTo(i + 1));
        assertThat(read.diagnostics()).allSatisfy(d -> assertThat(d.line()).isPositive());
        if (read.cues().isEmpty()) {
            assertThat(read.diagnostics()).isNotEmpty();
        }
    }

    @Test
    void pieces_of_the_three_formats_in_any_order_are_read() {
        Random random = new Random(20);
        for (int i = 0; i < 20_000; i++) {
            String file = IntStream.range(0, random.nextInt(24))
                    .mapToObj(n -> PIECES[random.nextInt(PIECES.length)])
                    .collect(Collectors.joining(random.nextBoolean() ? "\n" : "", i % 3 == 0 ? "WEBVTT\n\n" : "", ""));
            holdsTogether(Told.of(file).narration());
        }
    }

    @Test
    void any_bytes_are_read() {
        Random random = new Random(21);
        for (int i = 0; i < 5_000; i++) {
            byte[] bytes = new byte[random.nextInt(200)];
            random.nextBytes(bytes);
            holdsTogether(Told.of(bytes).narration());
        }
    }

    @Test
    void a_file_that_is_no_text_is_told_in_one_message() {
        byte[] bytes = new byte[100_000];
        new Random(22).nextBytes(bytes);
        assertThat(Told.of(bytes).faults()).containsExactly("NOT_TEXT 1");
        assertThat(Told.of(new byte[5000]).faults()).containsExactly("NOT_TEXT 1");
    }

    @Test
    void an_empty_file_has_no_notes() {
        assertThat(Told.of("").faults()).containsExactly("NO_NOTES 1");
        assertThat(Told.of("\n\n  \n").faults()).containsExactly("NO_NOTES 1");
    }

    @Test
    void the_other_encoding_of_dictation_programs_is_read_and_told() {
        String file = "WEBVTT\r\n\r\n00:01.000 --> 00:02.000\r\nrip caf\u00E9";
        for (var charset : new java.nio.charset.Charset[] {StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE}) {
            Told told = Told.of(("\uFEFF" + file).getBytes(charset));
            assertThat(told.words()).containsExactly("rip caf\u00E9");
            assertThat(told.faults()).containsExactly("UTF_16 1");
        }
    }

    @Test
    void a_hundred_faults_are_listed_and_the_others_counted() {
        Told told = Told.of("WEBVTT\n\n" + "00:00 --> 1\nrip\n\n".repeat(2000) + "00:01.000 --> 00:02.000\nspin");
        assertThat(told.words()).containsExactly("spin");
        assertThat(told.narration().diagnostics())
                .hasSize(101)
                .last()
                .satisfies(last -> assertThat(last.message()).contains("1900 more"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<", "<b ", "<v A", "&", "&#", "1,000", "[1:02", "1:02", "--", "-->", "{\\", " ", "\t", "9", ":"
            })
    void a_line_made_to_be_slow_is_not(String piece) {
        String much = piece.repeat(1_000_000 / piece.length());
        for (String file : new String[] {
            much,
            "WEBVTT\n\n" + much,
            "WEBVTT\n\n00:01.000 --> 00:02.000\n" + much,
            "WEBVTT\n\n" + much + "-->" + much,
            "WEBVTT\n\n-->" + much,
            "1\n00:00:01,000 --> 00:00:02,000\n" + much,
            "1\n00:00:01,000 --> 00:00:02,000\nx\n\n" + much + "-->" + much,
            "[0:01] x\n" + much
        }) {
            assertTimeoutPreemptively(
                    Duration.ofSeconds(20), () -> holdsTogether(Told.of(file).narration()));
        }
    }

    /** Words made to cost the square of their number; each is read in a second or two. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "rip ",
                "rip. ",
                "no ",
                ", ",
                "first one. ",
                "no rip or ",
                "he the tackle ",
                "watch that again. ",
                "rip no sorry chop ",
                "finishes with a rip but before that a chop. ",
                "[0:01] chop, rip, swim, dip\n",
                "the up and under the "
            })
    void notes_that_never_end_are_read(String words) {
        byte[] notes = words.repeat(200_000 / words.length()).getBytes(StandardCharsets.UTF_8);
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            Notes read = DevelopmentSetTest.READER.read(Narrations.read("notes", notes));
            assertThat(read.segments()).isNotEmpty();
        });
    }

    @Test
    void a_line_without_end_is_read_in_pieces_and_told() {
        Told told = Told.of("[0:01] " + "he rips inside ".repeat(1_000));
        assertThat(told.faults()).containsExactly("LONG_LINE 1");
        assertThat(told.narration().cues())
                .hasSize(2)
                .allSatisfy(cue -> assertThat(cue.start()).hasValue(1));
        assertThat(told.narration().text().replace('\n', ' ').strip())
                .isEqualTo("he rips inside ".repeat(1_000).strip());
    }

    @Test
    void long_notes_are_read_in_pieces_and_numbered_on() {
        String rep = "[%d:%02d:00] Next one. Wide 9. Tackle oversets. Chop, dip, flattens. Sack.\n";
        String file = IntStream.rangeClosed(1, 3_000)
                .mapToObj(i -> rep.formatted(i / 60, i % 60))
                .collect(Collectors.joining());
        Narration narration = Narrations.read("long", file.getBytes(StandardCharsets.UTF_8));
        List<Notes> pieces = new ArrayList<>();
        DevelopmentSetTest.READER.each(narration, "", pieces::add);
        assertThat(pieces).hasSizeGreaterThan(1);
        assertThat(pieces.stream().flatMap(piece -> piece.reps().stream()).map(ProposedRep::ordinal))
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, 3_000).boxed().toList());
        assertThat(pieces.stream().flatMap(piece -> piece.reps().stream()))
                .allSatisfy(rep1 -> assertThat(rep1.tags().stream().map(Mention::concept))
                        .containsExactly("wide-9", "over-set", "chop", "dip", "flatten", "sack"));
        assertThat(DevelopmentSetTest.READER.read(narration).reps())
                .isEqualTo(
                        pieces.stream().flatMap(piece -> piece.reps().stream()).toList());
    }
}
