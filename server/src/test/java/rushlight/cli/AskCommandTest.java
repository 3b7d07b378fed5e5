package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions as people type them, and what they read. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AskCommandTest {
    private static final String WRONG_ARM = "edge players who wrong-arm kick-outs";

    @TempDir
    private static Path league;

    @TempDir
    private Path folder;

    @BeforeAll
    static void the_league_is_imported_once() {
        assertThat(run("demo", "--data", league.toString()).code()).isZero();
    }

    @Test
    void an_answer_says_how_the_question_was_read_then_counts_then_reps() {
        Said said = ask(WRONG_ARM);

        assertThat(said.code()).isZero();
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(said.out())
                .startsWith("Read as: ")
                .contains(
                        "Keverne Toll",
                        "22 of 24 reps on which he met the kick-out block",
                        "Reps: Thornmere v Brackwater r01");
    }

    @Test
    void json_has_the_keys_of_the_contract() throws IOException {
        JsonNode answer = json(WRONG_ARM);

        assertThat(keys(answer)).contains("question", "reading", "total", "answers");
        assertThat(keys(answer.get("reading"))).contains("find", "text", "situation", "filters", "unread", "chips");
        assertThat(answer.get("reading").get("find").asText()).isEqualTo("prospects");
        assertThat(keys(answer.get("reading").get("situation"))).containsExactly("opportunity", "event");
        JsonNode first = answer.get("answers").get(0);
        assertThat(keys(first))
                .contains(
                        "id",
                        "kind",
                        "label",
                        "score",
                        "opportunities",
                        "events",
                        "rate",
                        "low",
                        "high",
                        "reps",
                        "thin");
        assertThat(first.get("kind").asText()).isEqualTo("prospect");
        assertThat(first.get("reps")).hasSize(first.get("opportunities").asInt());
        assertThat(keys(first.get("reps").get(0))).contains("rep", "game", "event", "seconds");
    }

    @Test
    void a_counter_has_trigger_and_timing_and_a_rep_has_its_place() throws IOException {
        JsonNode counter = json("counters to a bull rush when the tackle sits down")
                .get("answers")
                .get(0);
        assertThat(counter.get("kind").asText()).isEqualTo("counter");
        assertThat(counter.get("trigger").asText()).isEqualTo("sits-down");
        assertThat(counter.get("timing").isArray()).isTrue();

        JsonNode rep = json("sacks by Whitlow").get("answers").get(0);
        assertThat(rep.get("prospect").asText()).isEqualTo("lucan-whitlow");
        assertThat(keys(rep)).contains("game", "rep");
    }

    @Test
    void a_question_is_saved_listed_asked_again_and_forgotten() {
        assertThat(ask("--save", "spillers", WRONG_ARM).err()).contains("Saved as \"spillers\"");
        assertThat(ask("--saved").out()).contains("spillers: " + WRONG_ARM);
        assertThat(ask("--again", "Spillers").out()).contains("Keverne Toll");
        assertThat(ask("--again", "nobody").err())
                .contains("No question was saved")
                .contains("spillers");
        assertThat(ask("--forget", "spillers").code()).isZero();
        assertThat(ask("--saved").out()).contains("No question was saved yet");
    }

    @Test
    void words_that_mean_nothing_are_named_and_there_is_a_way_on() {
        Said said = ask("purple elephants");

        assertThat(said.out()).contains("Not read: ", "purple", "No answer.", "Try: ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "the of and",
                "<script>alert(1)</script>",
                "\u0007\u0001 bull",
                "\u043c\u044f\u0447",
                "((\"",
                "*:*"
            })
    void any_question_gets_a_clear_answer(String question) {
        Said said = ask(question);

        assertThat(said.code()).isZero();
        assertThat(said.out()).startsWith("Read as: ");
        assertThat(said.err()).isEmpty();
    }

    @Test
    void long_and_empty_questions_are_told() {
        assertThat(ask("bull rush ".repeat(199).strip()).code()).isZero();
        assertThat(ask("x".repeat(2_001)).err()).contains("at most 2000");
        assertThat(run("ask", "--data", league.toString()).code()).isEqualTo(2);
        assertThat(ask("--limit", "0", WRONG_ARM).code()).isEqualTo(2);
        assertThat(run("ask", "--data", folder.resolve("none").toString(), WRONG_ARM)
                        .err())
                .contains("There is no film");
    }

    @Test
    void markup_in_names_and_notes_is_text() throws IOException {
        Path csv = folder.resolve("evil.csv");
        Files.writeString(csv, """
            rep,prospect,game,phase,exchange,result,evaluator,note
            r01,<script>x</script> Bold,<b>Game</b>,pass-rush,bull-rush,won,Eyes,"<script>alert('cadence')</script>"
            """);
        String data = folder.resolve("data").toString();
        assertThat(run("import", "--data", data, csv.toString()).code()).isZero();

        Said said = run("ask", "--data", data, "notes about \"cadence\"");

        assertThat(said.out()).contains("<script>alert('cadence')</script>").contains("<b>Game</b>");
        JsonNode rep = new ObjectMapper()
                .readTree(run("ask", "--data", data, "--format", "json", "notes about \"cadence\"")
                        .out())
                .get("answers")
                .get(0);
        JsonNode mark = rep.get("highlight").get(0);
        assertThat(rep.get("text")
                        .asText()
                        .substring(mark.get(0).asInt(), mark.get(1).asInt()))
                .isEqualTo("cadence");
    }

    private static JsonNode json(String question) throws IOException {
        return new ObjectMapper().readTree(ask("--format", "json", question).out());
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static Said ask(String... args) {
        List<String> all = new ArrayList<>(List.of("ask", "--data", league.toString()));
        all.addAll(List.of(args));
        return run(all.toArray(String[]::new));
    }

    private static Said run(String... args) {
        return Said.to(args);
    }
}
