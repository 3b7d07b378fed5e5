package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.film.Identity;
import rushlight.film.Prospect;

/** Whom a command takes a typed name for. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ProspectNamesTest {
    private static final List<Prospect> KNOWN = Stream.of(
                    "Tavish Mordell", "Oren Castellow", "Oren Halloway", "Jo Ames")
            .map(name -> Prospect.named(Identity.slug(name), name))
            .toList();

    private final StringWriter told = new StringWriter();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"Mordell", "tavish", "Mordel", "Tavish Mordel", "tavihs mordell"})
    void a_part_of_a_name_or_one_slip_is_enough_where_only_one_can_be_meant(String typed) {
        assertThat(one(typed)).contains("Tavish Mordell");
        assertThat(told).hasToString("\"" + typed + "\" is taken for Tavish Mordell." + System.lineSeparator());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tavish Mordell", "TAVISH MORDELL", "tavish-mordell"})
    void whoever_is_named_in_full_is_not_told_of(String typed) {
        assertThat(one(typed)).contains("Tavish Mordell");
        assertThat(told.toString()).isEmpty();
    }

    @Test
    void where_several_can_be_meant_they_are_named_and_nobody_is_taken() {
        assertThat(one("Oren")).isEmpty();
        assertThat(told)
                .hasToString("\"Oren\" can be Oren Castellow (oren-castellow) or Oren Halloway (oren-halloway). Say"
                        + " which, by whole name or id." + System.lineSeparator());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Morrel", "Jon", "Tavish Mordant"})
    void two_slips_or_one_in_a_short_name_are_not_guessed_at(String typed) {
        assertThat(one(typed)).isEmpty();
        assertThat(told.toString()).startsWith("There is no film of \"" + typed + "\". Nearest: ");
    }

    @Test
    void an_export_into_a_folder_that_is_not_there_says_so_and_makes_no_file() throws Exception {
        Path log = Files.writeString(
                folder.resolve("friday.csv"), "rep,prospect,game,phase,result\nr1,Oren Halloway,Mill Night,run,won\n");
        String data = folder.resolve("data").toString();
        assertThat(Said.to("import", "--data", data, log.toString()).code()).isZero();

        Said nowhere =
                Said.to("export", "--data", data, folder.resolve("x/y.csv").toString());
        Said backup =
                Said.to("backup", "--data", data, folder.resolve("x/y.zip").toString());
        Said his = Said.to(
                "export",
                "--data",
                data,
                "--prospect",
                "Halloway",
                folder.resolve("his.csv").toString());

        assertThat(List.of(nowhere, backup)).allSatisfy(said -> {
            assertThat(said.code()).isEqualTo(1);
            assertThat(said.isPolite().err())
                    .startsWith("There is no folder " + folder.resolve("x") + "; nothing was written.")
                    .doesNotContain(".part");
        });
        assertThat(his.code()).isZero();
        assertThat(his.err()).startsWith("\"Halloway\" is taken for Oren Halloway.");
    }

    private Optional<String> one(String typed) {
        return ProspectNames.one(typed, KNOWN, new PrintWriter(told, true)).map(Prospect::name);
    }
}
