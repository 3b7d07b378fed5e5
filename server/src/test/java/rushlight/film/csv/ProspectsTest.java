package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rushlight.film.Identity;
import rushlight.film.Prospect;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ProspectsTest {
    private static final String HEADER = "id,name,position,height_cm,height_in,weight_kg,weight_lb,arm_in,team\n";

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @Test
    void measures_are_kept_in_centimeters_and_kilograms_whatever_the_column() {
        ProspectsReader.Result result =
                read(HEADER + "p07,Oren Halloway,edge,,75,,240,33.25,Calder Mill\n" + ",Teo Ravel,end,193.5,,108,,,\n");

        assertThat(result.faults()).isEmpty();
        assertThat(result.warnings()).isEmpty();
        assertThat(result.prospects())
                .containsExactly(
                        new Prospect(
                                "p07",
                                "Oren Halloway",
                                "edge",
                                OptionalDouble.of(190.5),
                                OptionalDouble.of(108.8621688),
                                OptionalDouble.of(84.455),
                                "Calder Mill",
                                "",
                                ""),
                        new Prospect(
                                "teo-ravel",
                                "Teo Ravel",
                                "end",
                                OptionalDouble.of(193.5),
                                OptionalDouble.of(108),
                                OptionalDouble.empty(),
                                "",
                                "",
                                ""));
    }

    @Test
    void both_units_may_be_given_where_they_agree() {
        assertThat(read(HEADER + ",A,,191,75,109,240,,\n").faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                ",A,,191,70,,,,|Line 2, height_in: a height of 191 centimeters is not 70 inches; keep the one that is"
                        + " right.",
                ",A,,,,109,260,,|Line 2, weight_lb: a weight of 109 kilograms is not 260 pounds; keep the one that is"
                        + " right.",
                ",A,,75,,,,,|Line 2, height_cm: 75 centimeters is no height of a man; look at the unit of the column.",
                ",A,,,191,,,,|Line 2, height_in: 191 inches is no height of a man; look at the unit of the column.",
                ",A,,,,240,,,|Line 2, weight_kg: 240 kilograms is no weight of a man; look at the unit of the column.",
                ",A,,,,,,84,|Line 2, arm_in: 84 inches is no arm length of a man; look at the unit of the column.",
                ",A,,,6-3,,,,|Line 2, height_in: \"6-3\" is no number of inches; write digits, with a point for parts.",
                ",,,,,,,,x|Line 2, name: every row needs a value here.",
                ",???,,,,,,,|Line 2, id: \"???\" has no letter and no digit, so it makes no address; give it a name.",
                "P 7,A B,,,,,,,|Line 2, id: \"P 7\" cannot stand in an address; write small letters, digits and"
                        + " hyphens, such as a-b.",
                ",A,|Line 2: this row has 3 cells and the header 9; look for a comma or a quote too many or too few."
            })
    void a_slip_is_told_with_its_unit(String row, String message) {
        assertThat(texts(read(HEADER + row + "\n").faults())).containsExactly(message);
    }

    @Test
    void a_rare_measure_is_kept_with_a_warning() {
        ProspectsReader.Result result = read(HEADER + ",A,,,84,,,,\n");

        assertThat(result.prospects()).hasSize(1);
        assertThat(texts(result.warnings()))
                .containsExactly("Line 2, height_in: 84 inches is a rare height; it was kept.");
    }

    @Nested
    @DisplayNameGeneration(ReplaceUnderscores.class)
    class Two_men {
        @Test
        void of_one_name_need_ids() {
            assertThat(texts(read("name\nA B\nA B\n").faults()))
                    .containsExactly(
                            "Line 3, id: \"A B\" stands in line 2 already; if they are two men, give each an id.");
            assertThat(read("id,name\np1,A B\np2,A B\n").prospects()).hasSize(2);
        }

        @Test
        void cannot_share_an_id() {
            assertThat(texts(read("id,name\np1,A B\np1,C D\n").faults()))
                    .containsExactly("Line 3, id: \"C D\" and \"A B\" in line 2 have one address, p1; write one of them"
                            + " everywhere, or tell the two apart.");
        }
    }

    @Test
    void the_header_is_checked_like_that_of_a_log() {
        assertThat(texts(read("id,nam,team,team\n").faults()))
                .containsExactly(
                        "Line 1, nam: a list of prospects has no column \"nam\"; did you mean name, team or id?",
                        "Line 1, team: the column stands in the header twice; keep one of them.",
                        "Line 1, name: the header lacks the column name, which every list of prospects needs.");
    }

    @Test
    void an_empty_or_missing_file_is_one_sentence(@TempDir Path folder) {
        assertThat(texts(read("").faults()))
                .containsExactly("prospects.csv is empty; a list of prospects starts with a row of column names: name,"
                        + " position, ...");
        assertThat(texts(ProspectsReader.read(folder.resolve("no.csv")).faults()))
                .containsExactly("There is no file " + folder.resolve("no.csv") + ".");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void what_is_written_reads_back_the_same(long seed) throws IOException {
        Random random = new Random(seed);
        List<String> nasty = List.of("=1+1", "'=x", "-", "a,b", "\"q\"", "line\nline", "", "caf\u00e9");
        List<Prospect> prospects = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            String name = "@man " + i;
            prospects.add(new Prospect(
                    random.nextBoolean() ? "p" + i : Identity.slug(name),
                    name,
                    "edge",
                    random.nextBoolean()
                            ? OptionalDouble.of((680 + random.nextInt(80)) * 0.254)
                            : OptionalDouble.empty(),
                    OptionalDouble.of(90 + random.nextInt(50)),
                    random.nextBoolean() ? OptionalDouble.of(84.455) : OptionalDouble.empty(),
                    "",
                    "senior",
                    nasty.get(random.nextInt(nasty.size())) + nasty.get(random.nextInt(nasty.size()))));
        }
        StringBuilder out = new StringBuilder();

        ProspectsWriter.write(prospects, out);

        assertThat(read(out.toString()).prospects())
                .usingRecursiveComparison()
                .withComparatorForType(
                        (a, b) -> Math.abs(a.orElse(-1) - b.orElse(-1)) < 1e-5 ? 0 : 1, OptionalDouble.class)
                .isEqualTo(prospects);
    }

    private static ProspectsReader.Result read(String text) {
        return ProspectsReader.read("prospects.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> texts(List<Fault> faults) {
        return faults.stream().map(Fault::text).toList();
    }
}
