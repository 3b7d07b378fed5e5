package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two men of the demo, kept in a folder; and what stands beside their numbers. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CompareCommandTest {
    @TempDir
    private static Path folder;

    @BeforeAll
    static void keep() {
        assertThat(Said.to(
                                "import",
                                "--data",
                                folder.toString(),
                                "../demo-data/prospects.csv",
                                "../demo-data/logs/tavish-mordell.csv",
                                "../demo-data/logs/keverne-toll.csv")
                        .code())
                .isZero();
    }

    @Test
    void what_may_tell_two_men_apart_is_said_with_its_range_and_how_many_comparisons_were_made() {
        Said said = compare("Tavish Mordell", "keverne-toll").isPolite();

        assertThat(said.code()).isZero();
        assertThat(said.out())
                .startsWith("Tavish Mordell, Keverne Toll, side by side")
                .contains("Leaning; it may be luck")
                .containsPattern("points between\\s+them,\\s+likely\\s+range")
                .containsPattern("\\d+ comparisons made\\. Looked at one by one, about \\d+ would look");
        assertThat(said.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Page.WIDTH));
        assertThat(compare("Tavish Mordell", "keverne-toll", "--all").out())
                .contains("not enough tape to compare; each wants");
    }

    @Test
    void what_stands_for_one_of_them_and_is_no_rate_is_shown_with_the_reason_why_it_is_not_compared() {
        assertThat(compare("Tavish Mordell", "keverne-toll").out())
                .containsPattern("Not compared\n  One-move rusher\n      \\S confirmed, Tavish Mordell")
                .containsPattern(
                        "Tavish Mordell 41 of 50, Keverne Toll \\d+ of \\d+: not compared; each is counted by");
    }

    @Test
    void a_program_gets_what_the_server_answers() throws JsonProcessingException {
        JsonNode answer = new ObjectMapper()
                .readTree(compare("Tavish Mordell", "keverne-toll", "--format", "json")
                        .out());

        assertThat(answer.get("prospects")).hasSize(2);
        assertThat(answer.at("/findings/0/apart").asBoolean()).isFalse();
        JsonNode first = answer.at("/findings/0/differences/0");
        assertThat(first.get("adjusted").asDouble())
                .as("over the house's tenth, so it may be luck")
                .isBetween(0.10, 1.0);
        assertThat(first.get("low").asDouble())
                .isLessThan(first.get("difference").asDouble());
    }

    @Test
    void one_man_twice_a_stranger_and_a_man_without_film_are_told() {
        assertThat(compare("Tavish Mordell", "tavish-mordell").err()).contains("two to four different prospects");
        assertThat(compare("Tavish Mordant", "keverne-toll").err()).contains("Nearest: Tavish Mordell");
        assertThat(compare("Teo Maravale", "keverne-toll").err()).contains("no film of Teo Maravale yet");
        assertThat(compare("keverne-toll").code()).isEqualTo(2);
    }

    @Test
    void too_few_peers_are_told_under_each_rate_and_one_tagger_at_the_head() {
        Said said = Said.to("assess", "--data", folder.toString(), "--peers", "--short", "Tavish Mordell");

        assertThat(said.out())
                .contains("One tagger: nobody else has read these games")
                .containsPattern(
                        "Beside his peers: Too few peers to read him beside: \\d+ of the \\d+ other edge defenders");
        assertThat(Said.to("assess", "--data", folder.toString(), "--short", "Tavish Mordell")
                        .out())
                .doesNotContain("Beside his peers");
    }

    private static Said compare(String... words) {
        String[] all = new String[words.length + 3];
        all[0] = "compare";
        all[1] = "--data";
        all[2] = folder.toString();
        System.arraycopy(words, 0, all, 3, words.length);
        return Said.to(all);
    }
}
