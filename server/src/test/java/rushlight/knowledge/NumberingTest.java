package rushlight.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class NumberingTest {
    private static final Numbering NUMBERING = Taxonomy.of(Ontology.packaged()).numbering();

    /** The table of the run-fits dossier, section 1B: sources S2, S3, S5, S28, S34, S35; the rest common practice. */
    @ParameterizedTest
    @CsvSource({
        "tight-end-inside, 7, 6i, 7, 5 in",
        "tight-end-head-up, 6, 6, 8,",
        "tight-end-outside, 9, 7, 9,",
        "outside-tight-end-on-air, 8, 8, ,",
        "wing-outside, wide 9, 9, ,",
        "tackle-outside-loose, wide 5, 6, 6,",
        "tackle-outside, 5, 5, 5, 5 out",
        "tackle-head-up, 4, 4, 4,",
        "tackle-inside, 4i, 4i, 4,"
    })
    void each_system_has_its_number_for_a_spot(String spot, String a, String b, String c, String d) {
        String[] numbers = {a, b, c, d};
        String[] systems = {"A", "B", "C", "D"};
        for (int i = 0; i < systems.length; i++) {
            if (numbers[i] != null) {
                assertThat(NUMBERING.positions(systems[i], numbers[i]))
                        .as("%s of system %s", numbers[i], systems[i])
                        .contains(spot);
            }
        }
    }

    @Test
    void there_are_four_systems() {
        assertThat(NUMBERING.systems()).containsExactly("A", "B", "C", "D");
    }

    @Test
    void a_seven_of_no_system_is_one_of_two_shades() {
        assertThat(NUMBERING.unnamed("7")).contains("ambiguous-tight-end-shade");
        assertThat(NUMBERING.unnamed("5")).isEmpty();
    }

    @Test
    void hyphens_and_blanks_in_a_number_do_not_matter() {
        assertThat(NUMBERING.positions("A", "4-i")).isEqualTo(NUMBERING.positions("A", "4I"));
        assertThat(NUMBERING.positions("A", "wide9")).isEqualTo(NUMBERING.positions("A", "wide 9"));
    }

    @Test
    void an_alignment_knows_its_spot() {
        assertThat(NUMBERING.positionOf("technique-7")).contains("tight-end-inside");
        assertThat(NUMBERING.alignmentsAt("tight-end-inside")).containsExactly("technique-6i", "technique-7");
    }
}
