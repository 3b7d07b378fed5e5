package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type, and what they read. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class MainTest {
    @TempDir
    private static Path league;

    @TempDir
    private Path folder;

    @BeforeAll
    static void the_league_is_imported_once() {
        assertThat(run("demo", "--data", league.toString()).code()).isZero();
    }

    @Test
    void an_assessment_fits_a_hundred_columns_and_leads_to_the_reps() {
        Said said = run("assess", "--data", league.toString(), "Tavish Mordell", "--all");

        assertThat(said.code()).isZero();
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(said.out())
                .contains("Main rush: bull rush", "What he lacks", "No inside counter", "Why it matters:", "Reps:")
                .contains("certified coaches");
    }

    @Test
    void json_has_the_keys_of_the_contract() throws IOException {
        JsonNode all = new ObjectMapper()
                .readTree(run("assess", "--data", league.toString(), "tavish-mordell", "--format", "json")
                        .out());

        assertThat(all.isArray()).isTrue();
        assertThat(keys(all.get(0))).contains("prospect", "id", "reps", "games", "leftOut", "primary", "findings");
        assertThat(keys(all.get(0).get("findings").get(0)))
                .contains(
                        "finding",
                        "polarity",
                        "verdict",
                        "severity",
                        "safety",
                        "measure",
                        "opportunities",
                        "events",
                        "games",
                        "rate",
                        "low",
                        "high",
                        "line",
                        "houseLine",
                        "probability",
                        "moreNeeded",
                        "mixedWith",
                        "opponentHeavy",
                        "rows",
                        "bounds",
                        "conditional",
                        "reps",
                        "said",
                        "train",
                        "because");
        assertThat(keys(all.get(0).get("findings").get(0).get("reps").get(0)))
                .contains("rep", "game", "event", "seconds");
    }

    @Test
    void a_log_can_be_assessed_without_keeping_it() throws IOException {
        Path log = log("r1,Jory Penwick,Opener,pass-rush,bull-rush > [anchor-hop],yes,lost\n");

        Said said = run(
                "assess",
                "--log",
                log.toString(),
                "--data",
                folder.resolve("none").toString());

        assertThat(said.code()).isZero();
        assertThat(said.out()).contains("Jory Penwick", "1 rep, 1 game");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void explaining_a_rep_tells_the_rule_and_the_tags_that_fired_it() throws IOException {
        Path log = log("r1,Jory Penwick,Opener,pass-rush,bull-rush > [anchor-hop] > push-pull,yes,won\n");

        Said said = run("assess", "--log", log.toString(), "--explain", "r1");

        assertThat(said.out())
                .contains("Exchange: bull rush > [", "because:", "exchange = push-pull", "by the book's:");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void a_stranger_gets_the_nearest_names() {
        Said said = run("assess", "--data", league.toString(), "Tavish Mordant");

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).startsWith("There is no film of \"Tavish Mordant\". Nearest: Tavish Mordell");
    }

    @Test
    void counters_are_found_by_any_name_and_counted_on_film() {
        Said said = run("counters", "bull rush", "--when", "sits down", "--data", league.toString());

        assertThat(said.code()).isZero();
        assertThat(said.out()).contains("1. push-pull", "Needs first:", "On your film:");
    }

    @Test
    void an_unknown_move_gets_the_nearest_ones() {
        Said said = run("counters", "bull rsh", "--data", folder.toString());

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("The book has no move called \"bull rsh\". Nearest: bull rush");
    }

    @Test
    void a_faulty_file_imports_nothing_and_its_good_rows_only_on_request() throws IOException {
        Path log = log("""
                r1,Jory Penwick,Opener,pass-rush,bull-rush > [anchor-hop],yes,lost
                r2,Jory Penwick,Opener,pass-rush,bul rush,yes,lost
                """);
        String data = folder.resolve("data").toString();

        Said refused = run("import", log.toString(), "--data", data);
        Said kept = run("import", log.toString(), "--data", data, "--keep-good");

        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("Line 3, exchange:", "did you mean bull rush", "Nothing was imported.");
        assertThat(kept.code()).isEqualTo(1);
        assertThat(kept.out()).contains("Imported 1 reading in 1 log");
        assertThat(Files.readString(folder.resolve("log.rejected.csv")))
                .contains("bul rush")
                .contains("did you mean");
        assertThat(run("assess", "--data", data).out()).contains("1 rep, 1 game");
    }

    @Test
    void what_is_exported_imports_again() {
        Path csv = folder.resolve("film.csv");

        assertThat(run("export", csv.toString(), "--data", league.toString()).code())
                .isZero();
        assertThat(run(
                                "import",
                                csv.toString(),
                                "--data",
                                folder.resolve("copy").toString())
                        .code())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo", "reindex", "import", "assess", "counters", "check", "export"})
    void every_command_teaches_itself(String command) {
        Said said = run(command, "--help");

        assertThat(said.code()).isZero();
        assertThat(said.out()).startsWith("Usage: rushlight " + command).contains("--data");
    }

    @Test
    void the_index_is_made_again_on_request_and_says_the_same() {
        String before = run("assess", "--data", league.toString(), "Tavish Mordell", "--all")
                .out();

        Said said = run("reindex", "--data", league.toString());

        assertThat(said.code()).isZero();
        assertThat(said.out()).startsWith("Indexed again: ").contains(" readings of 18 prospects in ");
        assertThat(run("assess", "--data", league.toString(), "Tavish Mordell", "--all")
                        .out())
                .isEqualTo(before);
        assertThat(run("reindex", "--data", folder.resolve("nowhere").toString())
                        .err())
                .contains("There is no data folder");
    }

    @Test
    void the_book_itself_is_sound() {
        Said said = run("check", "--data", folder.toString());

        assertThat(said.out()).contains("The book is sound:");
        assertThat(said.code()).isZero();
    }

    @Test
    void completion_is_a_script() {
        assertThat(run("generate-completion").out()).contains("complete -F").contains("counters");
    }

    @ParameterizedTest
    @ValueSource(strings = {"assess --all --short", "counters", "import", "export film.xml", "frobnicate", ""})
    void wrong_use_is_told_with_a_way_out(String line) {
        Said said = run((line.isEmpty() ? "" : line + " --data " + league).split(" ", -1));

        assertThat(said.code()).isEqualTo(2);
        assertThat(said.err()).contains("--help").doesNotContain("Exception", "\tat ");
    }

    @Test
    void files_that_are_none_get_one_clear_sentence_each() throws IOException {
        Files.write(
                folder.resolve("latin.csv"),
                "rep,prospect,game,phase\nr1,Ren\u00e9,Opener,run\n".getBytes(StandardCharsets.ISO_8859_1));
        Files.writeString(folder.resolve("quote.csv"), "rep,prospect,game,phase\nr1,\"Jory,Opener,run\n");
        Files.writeString(folder.resolve("empty.csv"), "");

        for (String name : List.of("latin.csv", "quote.csv", "empty.csv", ".", "missing.csv")) {
            Said said = run(
                    "import",
                    folder.resolve(name).toString(),
                    "--data",
                    folder.resolve("d").toString());
            assertThat(said.code()).as(name).isEqualTo(1);
            assertThat(said.err().lines().filter(l -> !l.startsWith("Nothing was imported")))
                    .as(name)
                    .hasSize(1);
            assertThat(said.err()).doesNotContain("Exception", "\tat ");
        }
    }

    @Test
    void a_folder_that_cannot_be_made_is_told_by_name() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "a file");

        Said said =
                run("import", log("").toString(), "--data", file.resolve("data").toString());

        assertThat(said.code()).isEqualTo(3);
        assertThat(said.err()).contains("taken").doesNotContain("Exception");
    }

    @Test
    void a_folder_misspelled_is_not_made() {
        Said said = run("assess", "--data", folder.resolve("typo").toString());

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("There is no film in").contains("rushlight import FILE");
        assertThat(folder.resolve("typo")).doesNotExist();
    }

    @Test
    void an_overlay_that_is_no_turtle_stops_the_program_with_its_line() throws IOException {
        Files.writeString(folder.resolve("overlay.ttl"), "kb:bull-rush");

        Said checked = run("check", "--data", folder.toString());
        Said said = run("counters", "bull rush", "--data", folder.toString());

        assertThat(checked.code()).isEqualTo(1);
        assertThat(checked.out()).contains("overlay.ttl: cannot be read as Turtle: [line: 1");
        assertThat(said.code()).isEqualTo(3);
        assertThat(said.err()).contains("overlay.ttl cannot be read as Turtle");
    }

    private Path log(String rows) throws IOException {
        return Files.writeString(
                folder.resolve("log.csv"), "rep,prospect,game,phase,exchange,second_move_time,result\n" + rows);
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        Iterator<String> names = node.fieldNames();
        names.forEachRemaining(keys::add);
        return keys;
    }

    private static Said run(String... args) {
        return Said.to(args.length == 1 && args[0].isEmpty() ? new String[0] : args);
    }
}
