package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two logs of one game on the desk, nothing kept. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AgreeCommandTest {
    private static final String HEADER = "rep,prospect,game,evaluator,phase,result\n";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void two_logs_are_compared_and_the_reps_stand_side_by_side() throws IOException {
        Path mine = log("mine.csv", "r1,Jory Penwick,Opener,Moss,run,won\nr2,Jory Penwick,Opener,Moss,run,won\n");
        Path theirs = log("theirs.csv", "r1,Jory Penwick,Opener,Reed,run,won\nr2,Jory Penwick,Opener,Reed,run,lost\n");

        assertThat(agree("--log", mine.toString(), "--log", theirs.toString())).isZero();
        assertThat(out.toString())
                .contains("Moss and Reed", "2 reps of Jory Penwick in 1 game were read by both; 1 rep differently")
                .contains("Under 30 reps in common", "Jory Penwick, Opener, r2")
                .containsPattern("result +Moss: won\\R +Reed: lost");
        assertThat(out.toString().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void json_has_the_counts_and_the_reps() throws IOException {
        Path both = log("both.csv", "r1,Jory Penwick,Opener,Moss,run,won\nr1,Jory Penwick,Opener,Reed,run,lost\n");

        assertThat(agree("--log", both.toString(), "--format", "json")).isZero();
        JsonNode answer = new ObjectMapper().readTree(out.toString());
        assertThat(answer.get("common").asInt()).isEqualTo(1);
        assertThat(answer.get("differences").get(0).get("cells").get(0).toString())
                .isEqualTo("{\"column\":\"result\",\"first\":\"won\",\"second\":\"lost\"}");
        assertThat(answer.get("facets").get(0).get("trust").asText()).isEqualTo("too-few");
    }

    @Test
    void one_evaluator_three_evaluators_and_strangers_are_told_what_to_do() throws IOException {
        Path one = log("one.csv", "r1,Jory Penwick,Opener,Moss,run,won\n");
        assertThat(agree("--log", one.toString())).isEqualTo(1);
        assertThat(err.toString()).contains("No game has been read by two evaluators");

        Path three = log("three.csv", """
            r1,Jory Penwick,Opener,Moss,run,won
            r1,Jory Penwick,Opener,Reed,run,lost
            r1,Jory Penwick,Opener,Dunn,run,lost
            """);
        assertThat(agree("--log", three.toString())).isEqualTo(1);
        assertThat(err.toString()).contains("Say which two with --between", "\"Moss\" \"Reed\"");
        assertThat(agree("--log", three.toString(), "--between", "Moss", "Dunn"))
                .isZero();
        assertThat(agree("--log", three.toString(), "--between", "Moss", "Read"))
                .isEqualTo(1);
        assertThat(err.toString()).contains("No log here is by \"Read\". Nearest: Reed");
        assertThat(agree("--log", three.toString(), "Jory Penrick Jr")).isEqualTo(1);
        assertThat(err.toString()).contains("There is no film of \"Jory Penrick Jr\". Nearest: Jory Penwick");
        assertThat(agree("--data", folder.resolve("nowhere").toString())).isEqualTo(1);
        assertThat(err.toString()).contains("There is no film in ");
    }

    private Path log(String name, String rows) throws IOException {
        return Files.writeString(folder.resolve(name), HEADER + rows);
    }

    private int agree(String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "agree";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), all);
    }
}
