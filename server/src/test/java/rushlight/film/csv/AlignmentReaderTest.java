package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class AlignmentReaderTest {
    @ParameterizedTest
    @CsvSource({
        "7, A, tight-end-inside",
        "7, B, tight-end-outside",
        "7, C, tight-end-inside",
        "8, C, tight-end-head-up",
        "9, A, tight-end-outside",
        "6i, B, technique-6i",
        "5 in, D, tight-end-inside",
        "5 out, D, tackle-outside",
        "seven tech, B, tight-end-outside",
        "7-technique, A, technique-7",
        "wide 9, A, wide-9",
    })
    void a_number_is_read_in_its_system(String label, String system, String slug) {
        ReadResult result =
                SmallLog.row("alignment", label, "numbering", system).read();

        assertThat(alignment(result)).isEqualTo(slug);
        assertThat(SmallLog.warnings(result)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"5, tackle-outside", "4i, technique-4i", "4-i, technique-4i", "5 tech, technique-5", "3, guard-outside"
    })
    void where_the_systems_agree_none_is_needed(String label, String slug) {
        ReadResult result = SmallLog.row("alignment", label).read();

        assertThat(alignment(result)).isEqualTo(slug);
        assertThat(SmallLog.warnings(result)).isEmpty();
    }

    @Test
    void a_bare_seven_stays_open_and_says_so() {
        ReadResult result = SmallLog.row("alignment", "7").read();

        assertThat(alignment(result)).isEqualTo("ambiguous-tight-end-shade");
        assertThat(SmallLog.warnings(result))
                .containsExactly("Line 2, alignment: \"7\": without its numbering system it can be \"inside shade of"
                        + " the tight end\" or \"outside shade of the tight end\"; it was read as \"on the tight end,"
                        + " shade not known\".");
    }

    @Test
    void the_default_system_settles_a_bare_number() {
        FilmLogReader.Options options = new FilmLogReader.Options(Optional.empty(), Optional.of("B"), List.of());

        assertThat(alignment(SmallLog.row("alignment", "7").read(options))).isEqualTo("tight-end-outside");
        assertThat(alignment(SmallLog.row("alignment", "7", "numbering", "A").read(options)))
                .isEqualTo("tight-end-inside");
    }

    @Test
    void a_slug_means_the_same_in_every_system() {
        ReadResult result =
                SmallLog.row("alignment", "technique-7", "numbering", "B").read();

        assertThat(alignment(result)).isEqualTo("technique-7");
        assertThat(SmallLog.warnings(result))
                .containsExactly(
                        "Line 2, alignment: \"technique-7\": this name always means \"inside shade of the tight"
                                + " end\"; the 7 of numbering B is written 7.");
    }

    @Test
    void a_number_with_two_readings_in_its_system_takes_the_usual_one_and_says_so() {
        ReadResult result = SmallLog.row("alignment", "6", "numbering", "B").read();

        assertThat(alignment(result)).isEqualTo("tackle-outside-loose");
        assertThat(SmallLog.warnings(result))
                .containsExactly("Line 2, alignment: \"6\": in numbering B it can be \"head-up on the tight end\" or"
                        + " \"loose outside the tackle\"; it was read as \"loose outside the tackle\".");
    }

    @Test
    void a_number_the_system_lacks_is_a_fault() {
        assertThat(SmallLog.faults(
                        SmallLog.row("alignment", "5 in", "numbering", "A").read()))
                .containsExactly("Line 2, alignment: numbering A has no \"5 in\"; did you mean 5, 2i or 4i?");
    }

    @Test
    void a_label_that_names_a_spot_twice_over_is_that_spot() {
        assertThat(alignment(SmallLog.row("alignment", "head up on the guard").read()))
                .isEqualTo("guard-head-up");
    }

    @Test
    void an_unknown_label_gets_the_nearest() {
        assertThat(SmallLog.faults(SmallLog.row("alignment", "wide nyne").read()))
                .containsExactly("Line 2, alignment: there is no \"wide nyne\"; did you mean wide nine, wide 5 or"
                        + " wide alignment?");
    }

    private static String alignment(ReadResult result) {
        assertThat(SmallLog.faults(result)).isEmpty();
        return ((ReadResult.Accepted) result)
                .logs()
                .get(0)
                .readings()
                .get(0)
                .one("alignment")
                .orElseThrow();
    }
}
