package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.util.DateTimeComponents;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.report.book.HtmlChecker;

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
    static void his_film_is_imported_once() {
        assertThat(Said.to(
                                "import",
                                "--data",
                                league.toString(),
                                "../demo-data/prospects.csv",
                                "../demo-data/logs/lucan-whitlow.csv")
                        .code())
                .isZero();
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

    @Test
    void a_calendar_has_an_event_for_every_session_on_its_day_and_says_who_decides() throws IOException {
        List<String> words = new ArrayList<>(List.of(HITTING));
        words.addAll(List.of("--start", "2026-08-03", "--format", "ics", "--at", "15:30"));
        ICalendar calendar =
                Biweekly.parse(plan(words.toArray(String[]::new)).out()).first();
        JsonNode sheet = json("--start", "2026-08-03");

        List<String> days = new ArrayList<>();
        for (JsonNode session : sheet.findParents("place")) {
            if (!session.get("blocks").isEmpty()) {
                days.add(session.get("date").asText() + "T15:30");
            }
        }
        assertThat(calendar.getEvents())
                .extracting(event -> {
                    DateTimeComponents start = event.getDateStart().getValue().getRawComponents();
                    return String.format(
                            "%d-%02d-%02dT%02d:%02d",
                            start.getYear(), start.getMonth(), start.getDate(), start.getHour(), start.getMinute());
                })
                .containsExactlyElementsOf(days);
        assertThat(days).isNotEmpty();
        assertThat(calendar.getEvents())
                .allSatisfy(event -> assertThat(event.getDescription().getValue())
                        .contains("Certified coaches and licensed medical staff decide"));
        Said undated = plan("--format", "ics");
        assertThat(undated.code()).isEqualTo(2);
        assertThat(undated.err()).contains("name the first day with --start");
    }

    @Test
    void the_sheet_for_the_field_is_sound_html_with_every_block_and_every_caution(@TempDir Path folder)
            throws Exception {
        List<String> words = new ArrayList<>(List.of(HITTING));
        words.addAll(List.of("--format", "sheet"));
        String html = plan(words.toArray(String[]::new)).out();
        // The checker has no reader of styles with it.
        Path file = Files.writeString(folder.resolve("sheet.html"), html.replaceFirst("(?s)<style>.*?</style>", ""));
        Document page = Jsoup.parse(html);
        JsonNode sheet = json();

        assertThat(new HtmlChecker().complaints(List.of(file))).isEmpty();
        int blocks = 0;
        for (JsonNode session : sheet.findParents("place")) {
            blocks += session.get("blocks").size();
        }
        assertThat(page.select(".blocks > li .box")).hasSize(blocks);
        for (JsonNode caution : sheet.get("cautions")) {
            assertThat(page.text()).contains(caution.get("text").asText().replaceAll("\\s+", " "));
        }
        assertThat(page.select(".decides").text())
                .isEqualTo(sheet.get("decides").asText());
    }

    private static JsonNode json(String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of(HITTING));
        words.addAll(List.of(more));
        words.addAll(List.of("--format", "json"));
        return new ObjectMapper().readTree(plan(words.toArray(String[]::new)).out());
    }

    private static Said plan(String... options) {
        List<String> words = new ArrayList<>(List.of("plan", "Lucan Whitlow", "--data", league.toString()));
        words.addAll(List.of(options));
        return Said.to(words.toArray(String[]::new));
    }
}
