package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans as a coach asks for them at the command line. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PlanCommandTest {
    private static final String[] HITTING = {
        "--profile",
        "high-school-2014",
        "--checked",
        "2026-08-01",
        "--approved",
        "thud",
        "--weeks",
        "2",
        "--sessions",
        "3"
    };

    @TempDir
    private static Path league;

    @BeforeAll
    static void the_league_is_imported_once() {
        assertThat(Said.to("demo", "--data", league.toString()).code()).isZero();
    }

    @Test
    void a_plan_says_who_decides_what_is_done_why_and_how_good_it_is() {
        Said said = plan(HITTING);
        assertThat(said.code()).isZero();
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(said.out().replaceAll("\\s+", " "))
                .contains("Certified coaches and licensed medical staff decide")
                .contains("NOT APPROVED until", "WEEK 1", "WEEK 2", "Monday", "Good when: ", "Say: ", "Stop now")
                .contains("Left out, and why", "What the next games must show", "Limits it keeps to")
                .containsPattern("better schedule exists|% better is possible|ot proven best");
        said.isPolite();
    }

    @Test
    void json_has_the_keys_of_the_contract_and_the_cautions() throws IOException {
        List<String> words = new ArrayList<>(List.of(HITTING));
        words.addAll(List.of("--format", "json", "--start", "2026-08-03"));
        JsonNode sheet =
                new ObjectMapper().readTree(plan(words.toArray(String[]::new)).out());
        JsonNode session = sheet.at("/weeks/0/sessions/0");
        assertThat(sheet.get("prospect").asText()).isEqualTo("Lucan Whitlow");
        assertThat(sheet.get("decides").asText()).contains("licensed medical staff decide");
        assertThat(session.get("session").asInt()).isEqualTo(1);
        assertThat(session.get("date").asText()).startsWith("2026-08-0");
        assertThat(session.at("/blocks/0").fieldNames())
                .toIterable()
                .contains("drill", "skill", "findings", "minutes", "contactMinutes", "reps");
        assertThat(sheet.at("/retest/0").fieldNames())
                .toIterable()
                .contains("finding", "now", "target", "opportunities");
        assertThat(sheet.get("cautions").findValuesAsText("part"))
                .contains("decides", "approval", "rule", "stop", "drill");
        assertThat(sheet.at("/left/0").fieldNames()).toIterable().contains("finding", "why");
        assertThat(sheet.get("none").isNull()).isTrue();
    }

    @Test
    void what_cannot_be_granted_is_told_and_no_plan_is_printed() {
        Said looser = plan(
                "--profile", "high-school-2014", "--checked", "2026-08-01", "--approved", "thud", "--contact", "60");
        assertThat(looser.code()).isEqualTo(1);
        assertThat(looser.out()).isEmpty();
        assertThat(looser.err().replaceAll("\\s+", " ")).contains("60 min would be looser than at most 12 min");
        Said stranger = Said.to("plan", "--data", league.toString(), "Lukan Witlow");
        assertThat(stranger.code()).isEqualTo(1);
        assertThat(stranger.err()).contains("Lucan Whitlow");
        Said nothing = plan("--work-on", "no such thing at all");
        assertThat(nothing.code()).isEqualTo(1);
        nothing.isPolite();
    }

    private static Said plan(String... options) {
        List<String> words = new ArrayList<>(List.of("plan", "Lucan Whitlow", "--data", league.toString()));
        words.addAll(List.of(options));
        return Said.to(words.toArray(String[]::new));
    }
}
