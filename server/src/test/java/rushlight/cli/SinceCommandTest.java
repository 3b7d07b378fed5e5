package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SinceCommandTest {
    private static final String LOG = "../demo-data/logs/teo-maravale.csv";

    @Test
    void then_and_now_are_told_with_what_to_keep_in_mind() {
        Said said = Said.to("assess", "--log", LOG, "--since", "2025-10-11").isPolite();

        assertThat(said.code()).isZero();
        assertThat(said.out())
                .contains("since Merrow Bay at Brackwater, 2025-10-11")
                .contains("No evidence of a change yet")
                .contains("Missed 10 of 18 tackles he got to (56 %) since, 11 of 20 (55 %) before.")
                .contains("When reading this")
                .contains("What was not cleared has not failed.");
        assertThat(said.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Page.WIDTH));
    }

    @Test
    void a_program_gets_the_same_numbers_by_the_name_of_the_game() throws JsonProcessingException {
        Said said = Said.to("assess", "--log", LOG, "--since", "Merrow Bay at Brackwater", "--format", "json");
        JsonNode one = new ObjectMapper().readTree(said.out()).get(0);

        assertThat(one.at("/since/date").asText()).isEqualTo("2025-10-11");
        assertThat(one.get("findings").get(0).get("finding").asText()).isEqualTo("misses-tackles-in-the-edge-lane");
        assertThat(one.at("/findings/0/now/events").asInt()).isEqualTo(10);
        assertThat(one.at("/findings/0/change").asText()).isEqualTo("no-evidence-yet");
        assertThat(one.at("/findings/0/byGame")).hasSize(9);
    }

    @Test
    void a_game_or_a_date_that_is_not_there_is_named_with_the_nearest() {
        Said game = Said.to("assess", "--log", LOG, "--since", "Merrow Bay at Stonfen")
                .isPolite();
        Said date = Said.to("assess", "--log", LOG, "--since", "2026-02-01").isPolite();

        assertThat(game.code()).isEqualTo(1);
        assertThat(game.err()).contains("Nearest: Merrow Bay at Stonefen");
        assertThat(date.code()).isEqualTo(1);
        assertThat(date.err()).contains("His last: Merrow Bay at Gannet Rock, 2025-11-01.");
    }
}
