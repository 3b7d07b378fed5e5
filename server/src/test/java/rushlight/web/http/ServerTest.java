package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.archive.Archive;
import rushlight.archive.DemoLeague;

/** A browser and a program ask the server over the invented league; every answer is held to the description. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ServerTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Contract CONTRACT = new Contract();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String JSON_TYPE = "application/json";
    private static final String REP = "/api/reps/teo-maravale/merrow-bay-at-calder-mill-2025-09-06/r02";
    private static final String REPORT = "/api/prospects/teo-maravale/report";
    private static final String PLAN = "/api/prospects/lucan-whitlow/plan";
    private static final String CROSS_CHECK =
            "/api/cross-check?first=m-ordway&second=T.%20Quillon&prospect=jem-sorrelby";
    private static final String NOTES = "[0:04] Wide 9. Chop, dip. Sack.\n[0:15] Five tech. Bull rush, stoned.\n";
    private static final String SCRIPT = "<script>alert(1)</script>";

    @TempDir
    private static Path folder;

    private static Archive archive;
    private static Server server;

    @BeforeAll
    static void start() {
        archive = Archive.open(folder);
        DemoLeague.into(archive);
        server = Server.start(archive, 0, true);
    }

    @AfterAll
    static void stop() {
        server.close();
        archive.close();
    }

    @Test
    void every_route_is_described_and_every_description_is_a_route() {
        Set<String> routes = Stream.concat(
                        Server.routes(archive, true, new Jobs(), new Meters()).stream(),
                        new SessionRoutes(new Door(Serving.here(archive, 0, true), new Caller(false, false)))
                                .routes().stream())
                .map(route -> route.method().name() + " " + route.path())
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(routes).containsExactlyInAnyOrderElementsOf(CONTRACT.operations());
        assertThat(CONTRACT.planned()).doesNotContainAnyElementsOf(routes);
    }

    @Test
    void every_operation_that_is_described_answers_as_described() throws Exception {
        for (String address : Set.of(
                "/api/openapi.json",
                "/api/version",
                "/api/health",
                "/health",
                "/ready",
                "/metrics",
                "/api/labels",
                "/api/columns",
                "/api/findings",
                "/api/complete?q=sit&column=exchange&by=blocker",
                "/api/complete?q=wo&column=result",
                "/api/concepts?kind=RushMove&limit=5",
                "/api/concepts?q=wrong%20arm",
                "/api/concepts/bull-rush",
                "/api/concepts/bull-rush/counters?when=sits-down",
                "/api/concepts/sits-down/counters",
                "/api/concepts/bull-rush/film",
                "/api/concepts/effort/film",
                "/api/prospects",
                "/api/prospects/teo-maravale",
                "/api/prospects/teo-maravale?over=left",
                "/api/prospects/teo-maravale/assessment",
                "/api/prospects/teo-maravale/assessment?reps=false&over=left",
                "/api/prospects/jem-sorrelby/assessment?peers=true&reps=false",
                "/api/prospects/teo-maravale/findings/primary-without-counter/reps",
                "/api/prospects/teo-maravale/findings/wide-rush-task/reps",
                "/api/prospects/teo-maravale/projections",
                "/api/plan/choices",
                "/api/prospects/teo-maravale/plan",
                "/api/ask?q=who%20wrong-arms%20kick-outs&limit=3",
                "/api/board?finding=primary-without-counter&finding=effort-fades",
                "/api/compare?id=teo-maravale&id=bram-aldersey",
                "/api/compare?id=teo-maravale&id=tavish-mordell&id=keverne-toll",
                "/api/logs",
                "/api/reps?limit=3",
                "/api/logs/m-ordway/teo-maravale/merrow-bay-at-calder-mill-2025-09-06",
                "/api/reps?prospect=teo-maravale&where=exchange:power-move&sort=-snap&limit=5",
                REP,
                REP + "/explanation",
                "/api/changes",
                CROSS_CHECK,
                "/api/export",
                "/api/session",
                "/api/audit",
                "/api/backup",
                "/api/clips",
                "/clips/calder-mill-at-harrow-vale.webm",
                "/api/questions",
                "/api/suggest?q=bull",
                "/api/concepts/bull-rush/teach",
                "/api/concepts/kick-out-block/answers",
                "/api/concepts/technique-9/front.svg",
                "/api/concepts/bull-rush/ladder.svg",
                "/api/prospects/teo-maravale/front.svg",
                "/api/prospects/teo-maravale/flow.svg?over=left",
                "/api/prospects/teo-maravale/report",
                "/api/prospects/teo-maravale/report.html?paper=a4",
                "/api/prospects/teo-maravale/report.pdf",
                "/api/prospects/teo-maravale/clips",
                "/api/prospects/tavish-mordell/clips.vtt?video=at-stonefen-cutup.mp4",
                "/api/prospects/teo-maravale/progress?since=2025-10-11",
                "/api/prospects/teo-maravale/findings/misses-tackles-in-the-edge-lane/games.svg?since=2025-10-11",
                "/id/bull-rush",
                "/sparql?query=ASK%20%7B%7D")) {
            HttpResponse<byte[]> answer = get(address);

            assertThat(answer.statusCode()).as(address).isEqualTo(200);
        }
        send("POST", REPORT + "/preview", "application/x-www-form-urlencoded", "summary=Bends.&parts=summary&paper=a4");
        // What changes something, in an order that leaves nothing behind.
        send("PUT", "/api/questions/power", JSON_TYPE, "{\"question\": \"edge players who win with power\"}");
        assertThat(json(get("/api/questions/power")).at("/question").asText()).contains("power");
        send("DELETE", "/api/questions/power", JSON_TYPE, "");
        ObjectNode cells = cells(REP);
        send("PUT", REP, JSON_TYPE, body(cells), "If-Match", etag(REP));
        cells.put("rep", "r900");
        send("POST", "/api/reps", JSON_TYPE, body(cells));
        send("DELETE", REP.replace("r02", "r900"), JSON_TYPE, "");
        send("POST", "/api/undo", JSON_TYPE, "");
        send("POST", "/api/undo", JSON_TYPE, "");
        send("POST", "/api/classify", JSON_TYPE, body(cells));
        send("POST", "/api/ask", JSON_TYPE, "{\"question\": \"counters to a bull rush\", \"limit\": 2}");
        String csv = Contract.text(get("/api/logs/m-ordway/teo-maravale/merrow-bay-at-calder-mill-2025-09-06"));
        send("POST", "/api/import/check", "text/csv", csv);
        send("POST", "/api/import", "text/csv", csv);
        send("POST", "/sparql", "application/sparql-query", "ASK {}");
        send("POST", "/api/notes?name=a.txt", "text/plain", NOTES);
        send("POST", "/api/notes/log", JSON_TYPE, notesLog(JSON.createArrayNode()));
        send("POST", "/api/notes/opinions", JSON_TYPE, notesLog(JSON.createArrayNode()));
        send(
                "PUT",
                REPORT,
                JSON_TYPE,
                "{\"summary\": \"\"}",
                "If-Match",
                json(get(REPORT)).at("/etag").asText());
        String projection = "/api/prospects/teo-maravale/projections/kim-orr";
        send("PUT", projection, JSON_TYPE, "{\"evaluator\": \"Kim Orr\", \"readiness\": \"Passing downs now.\"}");
        get(projection);
        send("DELETE", projection, JSON_TYPE, "", "If-Match", etag(projection));
        send("PUT", "/api/notes/decisions/a-txt", JSON_TYPE, decisions("a.txt", "{}"), "If-None-Match", "*");
        get("/api/notes/decisions/a-txt");
        get("/api/notes/learned");
        for (String wish : List.of("take", "ignore", "bring-back")) {
            send("POST", "/api/notes/learned/" + wish, JSON_TYPE, "{\"key\": \"nix\"}");
        }
        planned();
        send("PUT", "/api/opinions/nix", JSON_TYPE, "");
        send("DELETE", "/api/opinions/nix", JSON_TYPE, "");
        send("POST", "/api/cross-check/reconcile", JSON_TYPE, "{}");
        send("POST", "/api/session", JSON_TYPE, "{\"name\": \"Kim Orr\", \"password\": \"four words in a row\"}");
        send("PUT", "/api/session/password", JSON_TYPE, "{\"old\": \"\", \"password\": \"\"}");
        send("DELETE", "/api/session", JSON_TYPE, "");
        JsonNode job = json(send("POST", "/api/import?name=a.csv", "text/csv", csv, "Prefer", "respond-async"));
        String where = "/api/jobs/" + job.get("job").asText();
        while (json(get(where)).get("state").asText().equals("running")) {
            Thread.sleep(20);
        }
        assertThat(json(get(where)).get("state").asText()).isEqualTo("done");

        assertThat(CONTRACT.called()).containsAll(CONTRACT.operations());
    }

    /** A plan is made, held against its limits, kept, put on paper and into a calendar, brought back and taken back. */
    private static void planned() throws Exception {
        String asked = "{\"weeks\": 1, \"sessions\": 2, \"start\": \"2026-08-03\"}";
        HttpResponse<byte[]> made = send("POST", PLAN, JSON_TYPE, asked);
        assertThat(made.statusCode()).isEqualTo(200);
        String change = changed(asked, json(made));
        assertThat(json(send("POST", PLAN + "/check", JSON_TYPE, change))
                        .at("/kept")
                        .asBoolean())
                .isTrue();
        String first = etag(PLAN);
        assertThat(send("PUT", PLAN, JSON_TYPE, change).statusCode()).isEqualTo(428);
        assertThat(send("PUT", PLAN, JSON_TYPE, change, "If-Match", first).statusCode())
                .isEqualTo(200);
        assertThat(send("PUT", PLAN, JSON_TYPE, change, "If-Match", first).statusCode())
                .isEqualTo(412);
        assertThat(json(get(PLAN)).at("/sheet")).isEqualTo(json(made));
        String report = PLAN.replace("/plan", "/report.html");
        HttpResponse<byte[]> withIt = get(report);
        assertThat(Contract.text(withIt)).contains("The plan, kept on 20").contains("2 sessions;");
        assertThat(Contract.text(get(PLAN + ".html")))
                .contains("class=\"box\"", json(made).get("decides").asText());
        assertThat(Contract.text(get(PLAN + ".ics?at=15:30"))).contains("DTSTART:20260803T153000");
        assertThat(send("DELETE", PLAN, JSON_TYPE, "", "If-Match", etag(PLAN)).statusCode())
                .isEqualTo(200);
        assertThat(get(PLAN + ".html").statusCode()).isEqualTo(404);
        HttpResponse<byte[]> without = get(report);
        assertThat(Contract.text(without)).doesNotContain("kept on");
        assertThat(without.headers().firstValue("ETag"))
                .as("a browser does not show the old one")
                .isNotEqualTo(withIt.headers().firstValue("ETag"));
        assertThat(send("POST", PLAN + "/restore?version=1", JSON_TYPE, "", "If-Match", etag(PLAN))
                        .statusCode())
                .isEqualTo(200);
        assertThat(json(get(PLAN)).at("/version").asInt()).isEqualTo(3);
        assertThat(json(get(PLAN + "?version=2")).at("/takenBack").asBoolean()).isTrue();
        send("DELETE", PLAN, JSON_TYPE, "", "If-Match", etag(PLAN));
        JsonNode job = json(send("POST", PLAN, JSON_TYPE, asked, "Prefer", "respond-async"));
        String where = "/api/jobs/" + job.get("job").asText();
        while (json(get(where)).get("state").asText().equals("running")) {
            Thread.sleep(20);
        }
        assertThat(json(get(where)).at("/plan")).isEqualTo(json(made));
    }

    private static String changed(String asked, JsonNode sheet) throws JsonProcessingException {
        ObjectNode change = JSON.createObjectNode();
        change.set("request", JSON.readTree(asked));
        ArrayNode skills = change.putArray("skills");
        sheet.get("workOn").forEach(one -> skills.add(one.get("skill").asText()));
        ArrayNode sessions = change.putArray("sessions");
        for (JsonNode week : sheet.get("weeks")) {
            for (JsonNode session : week.get("sessions")) {
                ArrayNode blocks = sessions.addArray();
                session.get("blocks")
                        .forEach(block -> blocks.add(block.get("exercise").asText()));
            }
        }
        return JSON.writeValueAsString(change);
    }

    @Test
    void a_plan_changed_by_hand_is_told_in_words_what_it_breaks_and_is_not_kept() throws Exception {
        String asked = "{\"weeks\": 1, \"sessions\": 2}";
        JsonNode made = json(send("POST", PLAN, JSON_TYPE, asked));
        ObjectNode change = (ObjectNode) JSON.readTree(changed(asked, made));
        ArrayNode first = (ArrayNode) change.at("/sessions/0");
        change.at("/sessions/1").forEach(first::add);
        ((ArrayNode) change.at("/sessions/1")).removeAll();
        String all = JSON.writeValueAsString(change);

        JsonNode check = json(send("POST", PLAN + "/check", JSON_TYPE, all));
        HttpResponse<byte[]> kept = send("PUT", PLAN, JSON_TYPE, all, "If-Match", etag(PLAN));

        assertThat(check.get("kept").asBoolean()).isFalse();
        assertThat(check.get("breaches").findValuesAsText("sentence"))
                .isNotEmpty()
                .anyMatch(sentence -> sentence.matches("Week 1 [A-Z][a-z]+day: .* The limit: .*"));
        assertThat(check.at("/weeks/0/sessions/1/blocks")).isEmpty();
        assertThat(kept.statusCode()).isEqualTo(422);
        assertThat(json(kept).get("detail").asText()).startsWith("A plan that breaks a limit is not kept: ");
    }

    @Test
    void a_request_that_no_plan_can_grant_hears_what_clashes() throws Exception {
        JsonNode made = json(send("POST", PLAN, JSON_TYPE, "{\"weeks\": 2, \"sessions\": 2}"));
        String check = made.findValuesAsText("exercise").stream()
                .filter(slug -> slug.startsWith("check-"))
                .findFirst()
                .orElseThrow();
        String asked = "{\"weeks\": 2, \"sessions\": 2, \"workOn\": [\"" + check.substring("check-".length())
                + "\"], \"fixed\": [{\"wish\": \"pin\", \"exercise\": \"" + check + "\", \"session\": 0}]}";

        JsonNode sheet = json(send("POST", PLAN, JSON_TYPE, asked));

        assertThat(sheet.get("weeks")).isEmpty();
        assertThat(sheet.get("decides").asText()).contains("licensed medical staff decide");
        assertThat(sheet.at("/none/clash").toString()).contains("what was decided by hand: the check of ");
        assertThat(sheet.at("/none/giveUp/0").asText()).startsWith("take back what was decided by hand: the check of ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"weeks": 99} | A block has 1 to 12 weeks
            {"weeks": -2147483648} | A block has 1 to 12 weeks
            {"preset": "<b>"} | There are no weeks called
            {"start": "soon"} | is a date such as
            {"start": "+999999999-12-31"} | is that meant
            {"limits": {"contact-minutes-a-week": 1e999999999}} | from 0 to 10000
            {"limits": {"contact-minutes-a-week": 1e-999999999}} | from 0 to 10000
            {"limits": {"nix": null}} | has no number
            {"workOn": [null]} | lacks a name
            {"workOn": ["nix"]} | neither a finding nor a skill
            {"fixed": [null]} | names a wish
            {"fixed": [{"wish": "jump", "exercise": "x"}]} | pin, drop, leave or before
            {"fixed": [{"wish": "pin", "exercise": "x", "session": 0}]} | no drill "x"
            {"fixed": [{"wish": "pin", "exercise": "x", "session": -1}]} | not among the
            """)
    void a_plan_is_refused_in_words_whatever_is_asked_for(String body, String why) throws Exception {
        HttpResponse<byte[]> answer = send("POST", PLAN, JSON_TYPE, body);

        assertThat(answer.statusCode()).as(Contract.text(answer)).isEqualTo(422);
        assertThat(Contract.text(answer).replace("\\\"", "\"")).contains(why);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"request\": {}}",
                "{\"request\": {}, \"skills\": [], \"sessions\": []}",
                "{\"request\": {}, \"skills\": [\"nix\"], \"sessions\": [[\"x\"]]}",
                "{\"request\": {}, \"skills\": [null], \"sessions\": [null]}",
                "{\"request\": {\"weeks\": 0}, \"skills\": [], \"sessions\": [[]]}"
            })
    void sessions_that_are_no_plan_are_told_so(String body) throws Exception {
        assertThat(send("POST", PLAN + "/check", JSON_TYPE, body).statusCode()).isEqualTo(422);
        assertThat(send("PUT", PLAN, JSON_TYPE, body, "If-Match", "*").statusCode())
                .isEqualTo(422);
    }

    @Test
    void an_assessment_is_narrowed_by_game_side_and_opponent() throws Exception {
        JsonNode prospect = json(get("/api/prospects/teo-maravale"));
        String game = prospect.at("/games/0/id").asText();
        int reps = prospect.at("/games/0/reps").asInt();

        JsonNode all = json(get("/api/prospects/teo-maravale/assessment"));
        JsonNode one = json(get("/api/prospects/teo-maravale/assessment?game=" + game));
        int left = json(get("/api/prospects/teo-maravale/assessment?over=left"))
                .get("reps")
                .asInt();
        int right = json(get("/api/prospects/teo-maravale/assessment?over=right"))
                .get("reps")
                .asInt();

        assertThat(one.get("reps").asInt())
                .isEqualTo(reps)
                .isLessThan(all.get("reps").asInt());
        assertThat(one.get("games").asInt()).isEqualTo(1);
        assertThat(left + right).isEqualTo(all.get("reps").asInt());
        assertThat(get("/api/prospects/teo-maravale/assessment?opponent=nobody").statusCode())
                .isEqualTo(422);
    }

    @Test
    void two_evaluators_settle_on_a_rep_by_the_versions_they_saw() throws Exception {
        JsonNode check = json(get(CROSS_CHECK));
        JsonNode rep = check.at("/differences/0");
        String address = "/api/reps/jem-sorrelby/" + rep.get("game").asText() + "/"
                + rep.get("rep").asText();
        String column = rep.at("/cells/0/column").asText();
        String mine = etag(address + "?by=m-ordway");
        ObjectNode settled = JSON.createObjectNode();
        settled.put("prospect", "jem-sorrelby")
                .put("game", rep.get("game").asText())
                .put("rep", rep.get("rep").asText());
        settled.putObject("first").put("evaluator", "m-ordway").put("etag", mine);
        settled.putObject("second").put("evaluator", "t-quillon").put("etag", etag(address + "?by=t-quillon"));
        settled.putObject("choices").put(column, "second");

        HttpResponse<byte[]> done = send("POST", "/api/cross-check/reconcile", JSON_TYPE, settled.toString());

        assertThat(json(done).at("/reading/evaluator").asText()).isEqualTo("reconciled");
        assertThat(json(get(address)).at("/cells/" + column).asText())
                .isEqualTo(json(get(address + "?by=t-quillon"))
                        .at("/cells/" + column)
                        .asText());
        assertThat(etag(address + "?by=m-ordway")).isEqualTo(mine);
        assertThat(send("POST", "/api/cross-check/reconcile", JSON_TYPE, settled.toString())
                        .statusCode())
                .isEqualTo(412);
        settled.putObject("choices").put(column, "third");
        assertThat(send("POST", "/api/cross-check/reconcile", JSON_TYPE, settled.toString())
                        .statusCode())
                .isEqualTo(422);
        send("POST", "/api/undo?revision=" + json(done).get("revision").asLong(), JSON_TYPE, "");
        assertThat(json(get(address)).get("evaluator").asText()).isEqualTo("m-ordway");
        assertThat(get("/api/cross-check?first=m-ordway&second=m-ordway").statusCode())
                .isEqualTo(422);
        assertThat(get("/api/cross-check?first=m-ordway&second=nobody").statusCode())
                .isEqualTo(404);
        assertThat(get("/api/cross-check?first=m-ordway").statusCode()).isEqualTo(400);
    }

    @Test
    void a_finding_leads_to_its_reps_and_they_can_be_opened() throws Exception {
        JsonNode assessment = json(get("/api/prospects/teo-maravale/assessment"));
        for (JsonNode finding : assessment.get("findings")) {
            if (finding.get("verdict").asText().equals("confirmed")) {
                String slug = finding.get("finding").asText();
                JsonNode reps = json(get("/api/prospects/teo-maravale/findings/" + slug + "/reps"))
                        .get("reps");

                assertThat(reps.size()).isEqualTo(finding.get("reps").size());
                JsonNode rep = json(get(reps.get(0).at("/rep/href").asText()));
                assertThat(rep.get("rep").asText())
                        .isEqualTo(finding.at("/reps/0/rep").asText());
                return;
            }
        }
        throw new AssertionError("The league has nobody of whom anything is confirmed.");
    }

    @Test
    void where_he_lines_up_and_what_he_opens_with_add_up() throws Exception {
        JsonNode prospect = json(get("/api/prospects/teo-maravale"));

        assertThat(sum(prospect.get("spots"), "reps"))
                .isEqualTo(prospect.get("reps").asInt());
        assertThat(sum(prospect.get("phases"), "reps"))
                .isEqualTo(prospect.get("reps").asInt());
        assertThat(sum(prospect.get("moves"), "reps"))
                .isEqualTo(prospect.at("/flow/reps").asInt());
        double shares = 0;
        for (JsonNode move : prospect.get("moves")) {
            shares += move.get("share").asDouble();
        }
        assertThat(shares).isEqualTo(1, org.assertj.core.data.Offset.offset(1e-9));
        JsonNode primary = json(get("/api/prospects/teo-maravale/assessment")).get("primary");
        assertThat(prospect.at("/moves/0/move").asText())
                .isEqualTo(primary.get("move").asText());
    }

    @Test
    void an_edit_of_an_old_version_gets_both_versions_back() throws Exception {
        String rep = REP.replace("r02", "r04");
        String seen = etag(rep);
        ObjectNode cells = cells(rep);
        cells.put("note", "First.");
        assertThat(send("PUT", rep, JSON_TYPE, body(cells), "If-Match", seen).statusCode())
                .isEqualTo(200);
        cells.put("note", "Second.");

        HttpResponse<byte[]> stale = send("PUT", rep, JSON_TYPE, body(cells), "If-Match", seen);

        assertThat(stale.statusCode()).isEqualTo(412);
        assertThat(json(stale).at("/current/cells/note").asText()).isEqualTo("First.");
        assertThat(json(stale).at("/yours/note").asText()).isEqualTo("Second.");
        assertThat(send("PUT", rep, JSON_TYPE, body(cells)).statusCode()).isEqualTo(428);
        assertThat(send("POST", "/api/undo", JSON_TYPE, "").statusCode()).isEqualTo(200);
        assertThat(etag(rep)).isEqualTo(seen);
    }

    @Test
    void a_summary_is_kept_and_an_older_version_of_it_takes_nothing_away() throws Exception {
        String etag = json(get(REPORT)).at("/etag").asText();
        String mine = "{\"summary\": \"Bends <late>.\", \"author\": \"A. Reader\", \"parts\": [\"gaps\", \"summary\"]}";

        HttpResponse<byte[]> kept = send("PUT", REPORT, JSON_TYPE, mine, "If-Match", etag);
        HttpResponse<byte[]> late = send("PUT", REPORT, JSON_TYPE, "{\"summary\": \"No.\"}", "If-Match", etag);

        assertThat(kept.statusCode()).isEqualTo(200);
        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(json(get(REPORT)).at("/parts/0/part").asText()).isEqualTo("gaps");
        assertThat(Contract.text(get(REPORT + ".html")))
                .contains("<p>Bends &lt;late&gt;.</p>")
                .doesNotContain("House lines");
        String long1501 = "{\"summary\": \"" + "x".repeat(1501) + "\"}";
        assertThat(send("PUT", REPORT, JSON_TYPE, long1501, "If-Match", "*").statusCode())
                .isEqualTo(422);
        assertThat(send("PUT", REPORT, JSON_TYPE, "{\"parts\": [\"hair\"]}", "If-Match", "*")
                        .statusCode())
                .isEqualTo(422);
        assertThat(send("PUT", REPORT, JSON_TYPE, mine).statusCode()).isEqualTo(428);
    }

    @Test
    void a_draft_of_a_report_is_shown_and_not_kept_and_the_page_may_use_its_own_style_alone() throws Exception {
        String form = "application/x-www-form-urlencoded";
        String draft = "summary=Bends%0D%0A%3Clate%3E.&author=A.+Reader&parts=gaps&parts=summary";
        String before = Contract.text(get(REPORT));

        HttpResponse<byte[]> shown = send("POST", REPORT + "/preview", form, draft);

        assertThat(Contract.text(shown))
                .containsSubsequence("What he lacks", "<p>Bends</p>", "<p>&lt;late&gt;.</p>", "Written by A. Reader, ")
                .doesNotContain("House lines");
        assertThat(shown.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'; style-src 'sha256-", "frame-ancestors 'self'")
                .doesNotContain("script-src", "unsafe");
        assertThat(Contract.text(get(REPORT))).isEqualTo(before);
        assertThat(send("POST", REPORT + "/preview", form, "parts=hair").statusCode())
                .isEqualTo(422);
        assertThat(send("POST", REPORT + "/preview", form, "paper=a5").statusCode())
                .isEqualTo(400);
        assertThat(send("POST", REPORT + "/preview", form, "summary=" + "x".repeat(1501))
                        .statusCode())
                .isEqualTo(422);
        assertThat(send("POST", REPORT + "/preview", JSON_TYPE, "{}").statusCode())
                .isEqualTo(415);
        assertThat(send("POST", "/api/prospects/nobody/report/preview", form, "")
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void a_row_with_faults_changes_nothing_and_says_what_may_have_been_meant() throws Exception {
        ObjectNode cells = cells(REP);
        cells.put("exchange", "bul rush");
        cells.put("quarter", "twelve");

        HttpResponse<byte[]> answer = send("PUT", REP, JSON_TYPE, body(cells), "If-Match", etag(REP));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(json(answer).get("faults").findValuesAsText("column"))
                .containsExactlyInAnyOrder("exchange", "quarter");
        assertThat(json(answer).at("/faults").toString()).contains("bull rush");
        cells.put("exchange", "rip").put("quarter", "1").put("game", "Another game");
        assertThat(send("PUT", REP, JSON_TYPE, body(cells), "If-Match", etag(REP))
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void a_row_is_classified_while_it_is_typed() throws Exception {
        JsonNode answer = json(send(
                "POST",
                "/api/classify",
                JSON_TYPE,
                "{\"cells\": {\"phase\": \"pass-rush\", \"exchange\": \"bull rush > [sits down] > push-pull\","
                        + " \"result\": \"won\"}}"));

        assertThat(answer.get("classes").findValuesAsText("repClass")).contains("paired-counter");
        assertThat(answer.at("/cells/exchange").asText()).startsWith("bull-rush > [sits-down]");
        assertThat(answer.get("faults").findValuesAsText("column")).contains("rep", "prospect", "game");
    }

    @Test
    void a_file_with_faults_is_told_cell_by_cell_and_its_good_rows_can_be_kept() throws Exception {
        String csv = """
            rep,prospect,game,phase,exchange,result,evaluator
            r1,Nils Ockham,Opener,pass-rush,bull-rush,won,Kim
            r2,Nils Ockham,Opener,pass-rush,bul rush,won,Kim
            r3,Nils Ockham,Opener,pass-rush,rip,winner,Kim
            """;

        JsonNode checked = json(send("POST", "/api/import/check?name=friday.csv", "text/csv", csv));
        HttpResponse<byte[]> refused = send("POST", "/api/import?name=friday.csv", "text/csv", csv);

        assertThat(checked.get("faults").size()).isEqualTo(2);
        assertThat(checked.at("/faults/0/line").asInt()).isEqualTo(3);
        assertThat(checked.at("/faults/0/column").asText()).isEqualTo("exchange");
        assertThat(checked.at("/faults/0/nearest/0").asText()).isEqualTo("bull rush");
        assertThat(checked.at("/badRows/1/cells/5").asText()).isEqualTo("winner");
        assertThat(checked.get("badCsv").asText())
                .startsWith("rep,prospect,game,phase,exchange,result,evaluator,reason");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(get("/api/prospects/nils-ockham").statusCode()).isEqualTo(404);

        JsonNode kept = json(send("POST", "/api/import?name=friday.csv&keepGood=true", "text/csv", csv));

        assertThat(kept.get("came").asInt()).isEqualTo(1);
        assertThat(json(get("/api/reps?prospect=nils-ockham")).get("total").asInt())
                .isEqualTo(1);
        send("POST", "/api/undo", JSON_TYPE, "");
        assertThat(get("/api/prospects/nils-ockham").statusCode()).isEqualTo(404);
    }

    @Test
    void a_form_with_a_file_is_an_import_too() throws Exception {
        String form =
                "--cut\r\nContent-Disposition: form-data; name=\"file\"; filename=\"../../" + SCRIPT.replace("\"", "")
                        + ".csv\"\r\n"
                        + "Content-Type: text/csv\r\n\r\n"
                        + "rep,prospect,game,phase\r\n"
                        + "1,A,B,nix\r\n\r\n"
                        + "--cut--\r\n";

        JsonNode checked = json(send("POST", "/api/import/check", "multipart/form-data; boundary=cut", form));

        assertThat(checked.get("file").asText()).doesNotContain("..");
        assertThat(checked.at("/faults/0/column").asText()).isEqualTo("phase");
    }

    @Test
    void notes_become_a_log_of_the_tags_that_were_accepted() throws Exception {
        JsonNode sheet =
                json(send("POST", "/api/notes?name=../friday.txt&prospect=Nils%20Ockham", "text/plain", NOTES));
        JsonNode reps = sheet.at("/notes/reps");

        assertThat(sheet.at("/notes/source").asText()).isEqualTo("friday.txt");
        assertThat(reps).hasSize(2);
        JsonNode tag = reps.at("/0/tags/1");
        assertThat(sheet.get("text")
                        .asText()
                        .substring(tag.get("from").asInt(), tag.get("to").asInt()))
                .isEqualTo(tag.get("text").asText());

        String csv = Contract.text(send(
                "POST",
                "/api/notes/log",
                JSON_TYPE,
                notesLog(JSON.createArrayNode().add(tag.get("key").asText()))));

        assertThat(csv.lines()).hasSize(2);
        assertThat(csv).contains("r01,Nils Ockham,Opener", tag.get("concept").asText());
        JsonNode checked = json(send("POST", "/api/import/check?name=friday.csv", "text/csv", csv));
        assertThat(checked.get("faults")).isEmpty();
        assertThat(checked.get("readings").asInt()).isEqualTo(1);
        assertThat(send("POST", "/api/notes/log", JSON_TYPE, "{\"text\": \"\", \"accepted\": []}")
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void decisions_on_notes_are_kept_and_an_old_version_gets_both_back() throws Exception {
        String read = "/api/notes?name=decided.txt";
        JsonNode sheet = json(send("POST", read, "text/plain", NOTES));
        String one = "/api/notes/decisions/" + sheet.at("/kept/id").asText();
        String key = sheet.at("/notes/reps/0/tags/1/key").asText();
        String mine = decisions("decided.txt", "{\"chosen\": {\"" + key + "\": true}}");
        assertThat(sheet.at("/kept/version").asInt()).isZero();
        assertThat(get(one).statusCode()).isEqualTo(404);
        assertThat(send("PUT", one, JSON_TYPE, mine).statusCode()).isEqualTo(428);

        HttpResponse<byte[]> first = send("PUT", one, JSON_TYPE, mine, "If-None-Match", "*");

        assertThat(first.statusCode()).isEqualTo(201);
        String tag = first.headers().firstValue("ETag").orElseThrow();
        assertThat(etag(one)).isEqualTo(tag);
        assertThat(json(send("POST", read, "text/plain", NOTES))
                        .at("/kept/decided/chosen/" + pointer(key))
                        .asBoolean())
                .isTrue();
        String none = decisions("decided.txt", "{}");
        assertThat(send("PUT", one, JSON_TYPE, none, "If-Match", tag).statusCode())
                .isEqualTo(200);
        HttpResponse<byte[]> stale = send("PUT", one, JSON_TYPE, mine, "If-Match", tag);
        assertThat(stale.statusCode()).isEqualTo(412);
        assertThat(json(stale).at("/current/decided/chosen")).isEmpty();
        assertThat(json(stale).at("/yours/decided/chosen")).hasSize(1);
        assertThat(send("PUT", one, JSON_TYPE, mine, "If-None-Match", "*").statusCode())
                .isEqualTo(412);
        JsonNode before = json(get(one)).get("before");
        assertThat(before).hasSize(1);
        JsonNode was = json(get(one + "?version=" + before.at("/0/version").asInt()));
        assertThat(was.at("/decided/chosen/" + pointer(key)).asBoolean()).isTrue();
        assertThat(get(one + "?version=77").statusCode()).isEqualTo(404);
        String unknown = decisions("decided.txt", "{\"changed\": {\"" + key + "\": \"no-such\"}}");
        assertThat(send("PUT", one, JSON_TYPE, unknown, "If-Match", "\"d2\"").statusCode())
                .isEqualTo(422);
    }

    @Test
    void words_that_were_tagged_by_hand_are_taken_as_a_name_and_given_back() throws Exception {
        String key = "{\"key\": \"long-arm:corkscrews him off\"}";
        String notes = "[0:04] Wide 9. Corkscrews him off. Sack.";
        String tags = "/notes/reps/0/tags";
        String added = "{\"added\": [{\"concept\": \"long-arm\", \"text\": \"Corkscrews him off\", \"rep\": 1,"
                + " \"after\": \"\"}]}";
        send(
                "PUT",
                "/api/notes/decisions/learned-txt",
                JSON_TYPE,
                decisions("learned.txt", added),
                "If-None-Match",
                "*");
        int before =
                json(send("POST", "/api/notes", "text/plain", notes)).at(tags).size();

        JsonNode learned = json(get("/api/notes/learned")).at("/suggestions/0");
        JsonNode taken = json(send("POST", "/api/notes/learned/take", JSON_TYPE, key));

        assertThat(learned.at("/words").asText()).isEqualTo("corkscrews him off");
        assertThat(learned.at("/places/0/file").asText()).isEqualTo("learned.txt");
        assertThat(taken.at("/said").asText()).contains("is a name of long arm from now on");
        assertThat(taken.at("/suggestions/0/state").asText()).isEqualTo("taken");
        assertThat(json(send("POST", "/api/notes", "text/plain", notes)).at(tags))
                .hasSize(before + 1);
        HttpResponse<byte[]> ignored = send("POST", "/api/notes/learned/ignore", JSON_TYPE, key);
        assertThat(ignored.statusCode()).isEqualTo(409);
        assertThat(json(ignored).at("/reasons/0").asText()).contains("Bring it back first");
        send("POST", "/api/notes/learned/bring-back", JSON_TYPE, key);
        assertThat(json(send("POST", "/api/notes", "text/plain", notes)).at(tags))
                .hasSize(before);
        send("POST", "/api/notes/learned/ignore", JSON_TYPE, key);
        assertThat(json(get("/api/notes/learned")).at("/suggestions/0/state").asText())
                .isEqualTo("ignored");
        assertThat(send("POST", "/api/notes/learned/take", JSON_TYPE, "{\"key\": \"nix\"}")
                        .statusCode())
                .isEqualTo(404);
    }

    private static String decisions(String file, String decided) throws Exception {
        JsonNode notes = json(send("POST", "/api/notes?name=" + file, "text/plain", NOTES))
                .get("notes");
        ArrayNode outline = JSON.createArrayNode();
        for (JsonNode rep : notes.get("reps")) {
            ArrayNode keys = outline.addArray();
            rep.get("tags").forEach(tag -> keys.add(tag.get("key").asText()));
        }
        ObjectNode in = JSON.createObjectNode();
        in.put("file", file).set("decided", JSON.readTree(decided));
        in.set("outline", outline);
        return JSON.writeValueAsString(in);
    }

    private static String pointer(String key) {
        return key.replace("~", "~0").replace("/", "~1");
    }

    @Test
    void a_log_has_changed_and_added_tags_and_a_rep_that_was_split() throws Exception {
        JsonNode tags = json(send("POST", "/api/notes", "text/plain", NOTES)).at("/notes/reps/0/tags");
        ObjectNode in = (ObjectNode) JSON.readTree(notesLog(JSON.createArrayNode()));
        in.remove("accepted");
        in.remove("phases");
        ObjectNode decided = in.putObject("decided");
        for (JsonNode tag : tags) {
            decided.withObject("/chosen").put(tag.get("key").asText(), true);
        }
        String last = tags.get(tags.size() - 1).get("key").asText();
        decided.putObject("changed").put(tags.get(1).get("key").asText(), "arm-over");
        decided.putArray("splits").add(last);
        decided.putObject("phases").put("1", "pass-rush").put(last, "pass-rush");
        decided.putArray("added")
                .addObject()
                .put("concept", "long-arm")
                .put("text", "Chop")
                .put("rep", 1)
                .put("after", tags.get(1).get("key").asText());

        String csv = Contract.text(send("POST", "/api/notes/log", JSON_TYPE, JSON.writeValueAsString(in)));

        assertThat(csv.lines()).hasSize(3);
        assertThat(csv).contains("r01,Nils Ockham", "r01b,Nils Ockham", "arm-over > long-arm > dip", "sack");
        assertThat(json(send("POST", "/api/import/check?name=friday.csv", "text/csv", csv))
                        .get("faults"))
                .isEmpty();
    }

    @Test
    void what_is_said_of_a_player_stands_beside_his_findings_until_it_is_taken_back() throws Exception {
        String home = "/api/prospects/teo-maravale/assessment?reps=false";
        String before = etag(home);
        ObjectNode in = JSON.createObjectNode();
        in.put("name", "friday.txt").put("prospect", "Teo Maravale").put("game", "Opener");
        in.put("text", "Wide nine, bull rush, stopped.\n\nOverall, he could use a counter inside.\n");
        in.put("evaluator", "Kim")
                .putArray("accepted")
                .add("in-general/inside-move:counter inside")
                .add("no such key");

        JsonNode kept = json(send("POST", "/api/notes/opinions", JSON_TYPE, JSON.writeValueAsString(in)));

        assertThat(kept.get("opinions")).hasSize(1);
        assertThat(etag(home)).isNotEqualTo(before);
        JsonNode said = said(home, "no-inside-counter");
        assertThat(said.at("/0/speaker").asText()).isEqualTo("Kim");
        assertThat(said.at("/0/agreement").asText()).isIn("agrees", "disagrees", "not-enough-tape");
        assertThat(said.at("/0/sentence").asText())
                .startsWith("Kim said: \u201COverall, he could use a counter inside");
        String one = "/api/opinions/" + kept.at("/opinions/0/id").asText();
        send("DELETE", one, JSON_TYPE, "");
        assertThat(said(home, "no-inside-counter")).isEmpty();
        send("PUT", one, JSON_TYPE, "");
        assertThat(said(home, "no-inside-counter")).hasSize(1);
        send("DELETE", one, JSON_TYPE, "");
    }

    @Test
    void a_projection_is_kept_by_version_and_changes_no_count() throws Exception {
        String assessed = "/api/prospects/bram-aldersey/assessment?reps=false";
        JsonNode before = json(get(assessed));
        String tag = etag(assessed);
        String home = "/api/prospects/bram-aldersey/projections/lena-fisk";
        String said =
                "{\"evaluator\": \"Lena Fisk\", \"role\": \"big-end\", \"scale\": \"rounds\", \"tier\": \"third\"}";

        HttpResponse<byte[]> made = send("PUT", home, JSON_TYPE, said);
        assertThat(made.statusCode()).isEqualTo(201);
        assertThat(send("PUT", home, JSON_TYPE, said).statusCode()).isEqualTo(428);
        String first = etag(home);
        HttpResponse<byte[]> changed = send("PUT", home, JSON_TYPE, said.replace("third", "second"), "If-Match", first);
        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(send("PUT", home, JSON_TYPE, said, "If-Match", first).statusCode())
                .isEqualTo(412);
        assertThat(send("DELETE", home, JSON_TYPE, "", "If-Match", first).statusCode())
                .isEqualTo(412);

        assertThat(etag(assessed)).isNotEqualTo(tag);
        JsonNode after = json(get(assessed));
        assertThat(after.at("/projections/0/tier").asText()).isEqualTo("second");
        assertThat(after.at("/projections/0/sentence").asText())
                .startsWith("The judgement of Lena Fisk, ")
                .endsWith("; no part of the counts.");
        assertThat(after.get("findings")).isEqualTo(before.get("findings"));
        assertThat(after.get("roles")).isEqualTo(before.get("roles"));
        assertThat(json(get(home)).get("versions"))
                .extracting(one -> one.get("tier").asText())
                .containsExactly("second", "third");

        assertThat(send("DELETE", home, JSON_TYPE, "", "If-Match", etag(home)).statusCode())
                .isEqualTo(200);
        assertThat(json(get(assessed)).get("projections")).isEmpty();
        assertThat(send("PUT", home, JSON_TYPE, said).statusCode()).isEqualTo(201);
        assertThat(json(get(assessed)).at("/projections/0/version").asInt()).isEqualTo(4);
        send("DELETE", home, JSON_TYPE, "", "If-Match", etag(home));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            kim | {"evaluator": "Orr", "readiness": "now"} | the same as in the address
            kim | {"evaluator": "Kim"} | Nothing is said
            kim | {"evaluator": "Kim", "tier": "third"} | A tier stands on a scale
            kim | {"evaluator": "Kim", "role": "kicker"} | no role "kicker"
            """)
    void a_projection_that_says_too_little_is_refused(String by, String body, String why) throws Exception {
        HttpResponse<byte[]> answer = send("PUT", "/api/prospects/teo-maravale/projections/" + by, JSON_TYPE, body);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(json(answer).get("detail").asText()).contains(why);
    }

    private static JsonNode said(String home, String finding) throws Exception {
        for (JsonNode one : json(get(home)).get("findings")) {
            if (one.get("finding").asText().equals(finding)) {
                return one.get("said");
            }
        }
        throw new AssertionError("no finding " + finding);
    }

    private static String notesLog(JsonNode accepted) throws JsonProcessingException {
        ObjectNode in = JSON.createObjectNode();
        in.put("name", "friday.txt").put("text", NOTES).put("prospect", "Nils Ockham");
        in.put("game", "Opener").put("evaluator", "Kim").set("accepted", accepted);
        in.putObject("phases").put("1", "pass-rush");
        return JSON.writeValueAsString(in);
    }

    @Test
    void markup_in_names_and_notes_comes_back_as_text() throws Exception {
        ObjectNode cells = JSON.createObjectNode();
        cells.put("rep", SCRIPT)
                .put("prospect", "<b>Ola</b>")
                .put("game", "<i>Cup</i>")
                .put("phase", "run");
        cells.put("note", SCRIPT).put("evaluator", "Kim");
        HttpResponse<byte[]> added = send("POST", "/api/reps", JSON_TYPE, body(cells));

        assertThat(added.statusCode()).isEqualTo(201);
        String href = json(added).at("/reading/href").asText();
        HttpResponse<byte[]> rep = get(href);
        assertThat(json(rep).at("/cells/note").asText()).isEqualTo(SCRIPT);
        assertThat(json(rep).get("rep").asText()).isEqualTo(SCRIPT);
        assertThat(rep.headers().firstValue("Content-Type"))
                .hasValueSatisfying(t -> assertThat(t).startsWith(JSON_TYPE));
        assertThat(rep.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(rep.headers().firstValue("Content-Security-Policy"))
                .hasValueSatisfying(policy ->
                        assertThat(policy).contains("script-src 'self'").doesNotContain("unsafe"));
        send("DELETE", href, JSON_TYPE, "");
    }

    @Test
    void a_player_may_jump_within_a_clip() throws Exception {
        String clip = "/clips/calder-mill-at-harrow-vale.webm";
        byte[] whole = get(clip).body();

        HttpResponse<byte[]> part = get(clip, "Range", "bytes=10-19");
        HttpResponse<byte[]> end = get(clip, "Range", "bytes=-5");
        HttpResponse<byte[]> beyond = get(clip, "Range", "bytes=" + whole.length + "-");

        assertThat(part.statusCode()).isEqualTo(206);
        assertThat(part.body()).isEqualTo(Arrays.copyOfRange(whole, 10, 20));
        assertThat(part.headers().firstValue("Content-Range")).contains("bytes 10-19/" + whole.length);
        assertThat(part.headers().firstValue("Content-Type")).contains("video/webm");
        assertThat(end.body()).isEqualTo(Arrays.copyOfRange(whole, whole.length - 5, whole.length));
        assertThat(beyond.statusCode()).isEqualTo(416);
        assertThat(get(clip, "Range", "bytes=9-3").statusCode()).isEqualTo(200);
    }

    @Test
    void a_concept_is_a_page_turtle_or_json_ld() throws Exception {
        HttpResponse<byte[]> page = get("/id/bull-rush", "Accept", "text/html,application/xhtml+xml,*/*;q=0.8");

        assertThat(page.statusCode()).isEqualTo(303);
        assertThat(page.headers().firstValue("Location")).contains("/technique/bull-rush");
        assertThat(Contract.text(get("/id/bull-rush", "Accept", "text/turtle")))
                .contains("skos:prefLabel", "bull rush");
        assertThat(json(get("/id/bull-rush", "Accept", "application/ld+json")).toString())
                .contains("bull rush");
        assertThat(get("/id/bull-rush", "Accept", "image/png").statusCode()).isEqualTo(406);
        assertThat(get("/id/no-such-thing").statusCode()).isEqualTo(404);
    }

    @Test
    void a_browser_that_opens_the_sparql_address_is_led_to_the_page_that_says_how_to_ask() throws Exception {
        HttpResponse<byte[]> page = get("/sparql", "Accept", "text/html,application/xhtml+xml,*/*;q=0.8");

        assertThat(page.statusCode()).isEqualTo(303);
        assertThat(page.headers().firstValue("Location")).hasValue("/programs#sparql");
        assertThat(get("/sparql", "Accept", "text/csv").statusCode()).isEqualTo(400);
        assertThat(json(get("/sparql?query=ASK%7B%7D", "Accept", "text/html,*/*;q=0.8"))
                        .get("boolean")
                        .asBoolean())
                .isTrue();
    }

    @Test
    void whose_step_is_completed_is_said_in_the_words_of_the_book() throws Exception {
        assertThat(json(get("/api/complete?q=spin&column=exchange&by=him")).at("/completions"))
                .isNotEmpty();

        HttpResponse<byte[]> refused = get("/api/complete?q=spin&column=exchange&by=prospect");

        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(json(refused).get("detail").asText()).isEqualTo("\"by\" is blocker or him, not \"prospect\".");
    }

    @Test
    void a_refused_preview_may_be_shown_in_the_frame_it_was_wanted_in() throws Exception {
        HttpResponse<byte[]> refused =
                send("POST", REPORT + "/preview", "application/x-www-form-urlencoded", "summary=" + "a".repeat(1501));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'", "frame-ancestors 'self'");
    }

    @Test
    void sparql_counts_film_with_the_words_of_the_book() throws Exception {
        String query = "PREFIX rl: <https://rushlight.example/def#> PREFIX skos:"
                + " <http://www.w3.org/2004/02/skos/core#> SELECT (COUNT(?r) AS ?n) { ?r a rl:Reading ; rl:hisStep/rl:does"
                + " ?m . ?m skos:prefLabel \"bull rush\"@en }";

        JsonNode answer = json(send("POST", "/sparql", "application/sparql-query", query));

        assertThat(answer.at("/results/bindings/0/n/value").asInt()).isPositive();
        HttpResponse<byte[]> csv = get("/sparql?query=" + url(query), "Accept", "text/csv");
        assertThat(Contract.text(csv)).startsWith("n\r\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SELECT * { SERVICE <http://127.0.0.1:1/x> { ?s ?p ?o } }",
                "SELECT * FROM <http://127.0.0.1:1/x> { ?s ?p ?o }",
                "SELECT (<java:java.lang.System>() AS ?x) {}",
                "SELECT * { FILTER EXISTS { SERVICE <http://127.0.0.1:1/> {} } }",
                "INSERT DATA { <a:a> <a:b> <a:c> }",
                "SELECT nonsense",
                ""
            })
    void sparql_reaches_nothing_but_the_graph(String query) throws Exception {
        assertThat(send("POST", "/sparql", "application/sparql-query", query).statusCode())
                .isEqualTo(400);
    }

    @Test
    void sparql_that_would_never_end_is_cut_off() throws Exception {
        HttpResponse<byte[]> answer = send(
                "POST",
                "/sparql",
                "application/sparql-query",
                "SELECT (COUNT(*) AS ?n) { ?a ?b ?c . ?d ?e ?f . ?g ?h ?i }");

        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(json(answer).get("detail").asText()).contains("LIMIT");
    }

    @Test
    void other_sites_and_other_names_are_kept_out() throws Exception {
        assertThat(plain("POST", "/api/undo", "Origin", "http://elsewhere.example")
                        .statusCode())
                .isEqualTo(403);
        assertThat(plain("POST", "/api/undo", "Sec-Fetch-Site", "cross-site").statusCode())
                .isEqualTo(403);
    }

    @Test
    void what_a_browser_has_already_is_not_sent_again() throws Exception {
        for (String address : Set.of("/api/labels", "/api/prospects/teo-maravale", "/")) {
            HttpResponse<byte[]> first = plain("GET", address);
            String etag = first.headers().firstValue("ETag").orElseThrow();

            assertThat(plain("GET", address, "If-None-Match", etag).statusCode())
                    .as(address)
                    .isEqualTo(304);
        }
    }

    @Test
    void pages_have_addresses_of_their_own() throws Exception {
        for (String address : Set.of("/", "/technique/bull-rush", "/prospect/teo-maravale", "/board", "/import")) {
            HttpResponse<byte[]> page = plain("GET", address);

            assertThat(page.statusCode()).as(address).isEqualTo(200);
            assertThat(page.headers().firstValue("Content-Type"))
                    .hasValueSatisfying(type -> assertThat(type).startsWith("text/html"));
        }
        assertThat(plain("GET", "/no-such-file.js").statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET /api/nothing",
                "GET /api/undo",
                "POST /api/labels",
                "GET /api/concepts/%00",
                "GET /clips/..%2f..%2fx",
                "GET /clips/%2e%2e",
                "GET /api/reps?limit=0",
                "GET /api/reps?limit=many",
                "GET /api/reps?where=nix:1",
                "GET /api/reps?where=",
                "GET /api/reps?sort=nix",
                "GET /api/prospects/%F0%9F%92%A5",
                "GET /api/compare?id=a",
                "GET /api/board?finding=nix",
                "GET /api/reps/a/b/c",
                "GET /api/jobs/0",
                "GET /api/complete?column=nix",
                "GET /api/complete?by=nix",
                "GET /api/logs/a/b/c",
                "PUT /api/questions/--",
                "GET /api/undo/../labels",
                "GET /sparql",
                "POST /sparql",
                "POST /api/import",
                "POST /api/notes",
                "POST /api/notes/log",
                "POST /api/notes/opinions",
                "PUT /api/notes/decisions/nix",
                "GET /api/notes/decisions/nix",
                "POST /api/notes/learned/take",
                "POST /api/notes/learned/ignore",
                "POST /api/notes/learned/bring-back",
                "PUT /api/opinions/nix",
                "DELETE /api/opinions/nix",
                "GET /api/prospects/nix/projections",
                "GET /api/prospects/nix/plan",
                "GET /api/prospects/teo-maravale/plan.html",
                "GET /api/prospects/teo-maravale/plan.ics?at=noon",
                "GET /api/prospects/teo-maravale/plan?version=7",
                "GET /api/prospects/teo-maravale/plan?version=x",
                "POST /api/prospects/nix/plan",
                "POST /api/prospects/teo-maravale/plan/check",
                "POST /api/prospects/teo-maravale/plan/restore",
                "DELETE /api/prospects/teo-maravale/plan",
                "GET /api/prospects/teo-maravale/projections/nix",
                "DELETE /api/prospects/teo-maravale/projections/nix",
                "POST /api/reps",
                "POST /api/undo?revision=99999",
                "POST /api/undo?revision=x",
                "DELETE /api/questions/nix"
            })
    void whatever_is_wrong_is_told_as_a_problem(String request) throws Exception {
        String[] parts = request.split(" ", 2);
        HttpResponse<byte[]> answer = plain(parts[0], parts[1]);

        assertThat(answer.statusCode()).as(Contract.text(answer)).isBetween(400, 499);
        assertThat(answer.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("application/problem+json"));
        JsonNode problem = json(answer);
        assertThat(problem.get("status").asInt()).isEqualTo(answer.statusCode());
        assertThat(problem.get("detail").asText())
                .isNotBlank()
                .doesNotContain("Exception")
                .doesNotContain(folder.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "null", "{\"cells\": 3}", "{\"cells\": {\"rep\": {}}}", "{\"other\": 1}"})
    void json_that_is_none_is_told_so(String text) throws Exception {
        assertThat(send("POST", "/api/classify", JSON_TYPE, text).statusCode()).isBetween(400, 422);
        assertThat(send("POST", "/api/classify", "text/plain", text).statusCode())
                .isEqualTo(415);
    }

    @Test
    void too_much_at_once_is_refused() throws Exception {
        String much = "{\"cells\": {\"note\": \"" + "x".repeat(2 << 20) + "\"}}";

        assertThat(refusal(much)).isEqualTo(413);
    }

    /** A server that refuses early may cut the line while the rest is still being sent; then the refusal was not heard. */
    private static int refusal(String much) throws Exception {
        for (int again = 0; again < 20; again++) {
            try {
                return send("POST", "/api/classify", JSON_TYPE, much).statusCode();
            } catch (IOException lineWasCut) {
                Thread.sleep(50);
            }
        }
        throw new AssertionError("Twenty times the line was cut before the refusal was heard.");
    }

    private static HttpResponse<byte[]> get(String address, String... headers) throws Exception {
        return held("GET", address, plain("GET", address, headers));
    }

    private static HttpResponse<byte[]> send(String method, String address, String type, String body, String... headers)
            throws Exception {
        HttpRequest.Builder request =
                request(address, headers).header("Content-Type", type).method(method, BodyPublishers.ofString(body));
        return held(method, address, CLIENT.send(request.build(), BodyHandlers.ofByteArray()));
    }

    private static HttpResponse<byte[]> plain(String method, String address, String... headers) throws Exception {
        return CLIENT.send(
                request(address, headers)
                        .method(method, BodyPublishers.noBody())
                        .build(),
                BodyHandlers.ofByteArray());
    }

    private static HttpRequest.Builder request(String address, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + address));
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return request;
    }

    private static HttpResponse<byte[]> held(String method, String address, HttpResponse<byte[]> answer) {
        CONTRACT.hold(method, address, answer);
        return answer;
    }

    private static ObjectNode cells(String rep) throws Exception {
        return (ObjectNode) json(get(rep)).get("cells");
    }

    private static String etag(String rep) throws Exception {
        return get(rep).headers().firstValue("ETag").orElseThrow();
    }

    private static String body(ObjectNode cells) throws JsonProcessingException {
        return JSON.writeValueAsString(JSON.createObjectNode().set("cells", cells));
    }

    private static JsonNode json(HttpResponse<byte[]> answer) throws IOException {
        return JSON.readTree(answer.body());
    }

    private static int sum(JsonNode rows, String field) {
        int sum = 0;
        for (JsonNode row : rows) {
            sum += row.get(field).asInt();
        }
        return sum;
    }

    private static String url(String text) {
        return java.net.URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
