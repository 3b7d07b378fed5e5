package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.accounts.Accounts;
import rushlight.accounts.Role;
import rushlight.archive.Archive;

/**
 * Two teams under one server. Whatever one asks with ids of the other, it learns no more than that they are unknown: the
 * answer is, word for word, the one to an id that nobody has.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TeamsTest {
    /** Both questions stand in the record of what is done, the hour in a backup, and what the machine does in its measures. */
    private static final Set<String> CHANGES_BY_ITSELF = Set.of("/api/audit", "/api/backup", "/metrics");

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String THEIRS = "Kim Orr";
    private static final String OURS = "Pat Sorley";
    private static final String NOBODYS = "nobodys";
    private static final String HEADER = "rep,prospect,game,phase,alignment,exchange,result,evaluator\n";
    private static final String FILM = HEADER
            + "r1,Oren Halloway,Mill Night,pass-rush,technique-9,bull-rush,won,Lee Arden\n"
            + "r2,Oren Halloway,Mill Night,pass-rush,technique-9,rip,lost,Lee Arden\n";
    private static final String OUR_FILM =
            HEADER + "s1,Silas Penhallow,Stone Day,pass-rush,technique-5,spin,won,Jo Fenwick\n";

    /** What stands for the parts of an address, so that it names something of the other team. */
    private static final Map<String, String> PARTS = Map.of(
            "id", "oren-halloway",
            "prospect", "oren-halloway",
            "game", "mill-night",
            "rep", "r1",
            "evaluator", "lee-arden",
            "finding", "effort-fades",
            "job", "1",
            "name", "halloway-asked",
            "slug", "bull-rush");

    @TempDir
    private static Path folder;

    private static final List<Archive> ARCHIVES = new ArrayList<>();
    private static Guests guests;

    @BeforeAll
    static void start() throws Exception {
        Accounts accounts = Accounts.in(folder, 4, Clock.systemUTC());
        List<Serving.Team> teams = new ArrayList<>();
        for (String team : List.of("harrow-vale", "stonefen")) {
            Path home = Files.createDirectories(folder.resolve(team));
            Archive archive = Archive.open(home);
            ARCHIVES.add(archive);
            teams.add(new Serving.Team(team, home, archive));
        }
        accounts.add(THEIRS, "harrow-vale", Role.ADMINISTRATOR, Guests.PASSWORD.toCharArray());
        accounts.add(OURS, "stonefen", Role.ADMINISTRATOR, Guests.PASSWORD.toCharArray());
        accounts.add("Lost Soul", "gone-team", Role.ADMINISTRATOR, Guests.PASSWORD.toCharArray());
        guests = Guests.of(teams, accounts, folder);
        String them = bearer(THEIRS);
        String us = bearer(OURS);
        taken(guests.ask("POST", "/api/import?name=halloway.csv", "text/csv", FILM, "Authorization", them));
        taken(guests.ask(
                "POST",
                "/api/import?name=halloway.csv",
                "text/csv",
                FILM,
                "Authorization",
                them,
                "Prefer",
                "respond-async"));
        taken(guests.ask(
                "PUT",
                "/api/questions/halloway-asked",
                "application/json",
                "{\"question\": \"edge players who win with power\"}",
                "Authorization",
                them));
        taken(guests.ask(
                "PUT",
                "/api/prospects/oren-halloway/projections/lee-arden",
                "application/json",
                "{\"evaluator\": \"Lee Arden\", \"readiness\": \"Rushes behind the harrow.\"}",
                "Authorization",
                them));
        taken(guests.ask("POST", "/api/import", "text/csv", OUR_FILM, "Authorization", us));
    }

    @AfterAll
    static void stop() {
        guests.close();
        ARCHIVES.forEach(Archive::close);
    }

    static List<String> readable() throws IOException {
        try (InputStream in = TeamsTest.class.getResourceAsStream(Rules.DESCRIPTION)) {
            List<String> paths = new ArrayList<>();
            for (Map.Entry<String, JsonNode> path :
                    JSON.readTree(in).get("paths").properties()) {
                if (path.getValue().has("get")) {
                    paths.add(path.getKey());
                }
            }
            return paths;
        }
    }

    @ParameterizedTest
    @MethodSource("readable")
    void an_id_of_another_team_is_an_id_that_nobody_has(String path) throws Exception {
        for (int fill = 0; fill < 2; fill++) {
            boolean whole = fill == 1;
            String theirs = filled(path, false);
            HttpResponse<String> seen = guests.get(theirs + query(whole, false), "Authorization", bearer(OURS));
            assertThat(Stream.of("Halloway", "Arden", "Mill Night", "behind the harrow", THEIRS)
                            .filter(seen.body()::contains))
                    .as(path)
                    .isEmpty();
            HttpResponse<String> unknown =
                    guests.get(filled(path, true) + query(whole, true), "Authorization", bearer(OURS));
            assertThat(seen.statusCode()).as(path).isEqualTo(unknown.statusCode());
            if (!CHANGES_BY_ITSELF.contains(path)) {
                assertThat(same(seen.body())).as(path).isEqualTo(same(unknown.body()));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/prospects/oren-halloway",
                "/api/reps/oren-halloway/mill-night/r1",
                "/api/logs/lee-arden/oren-halloway/mill-night",
                "/api/questions/halloway-asked",
                "/api/jobs/1",
                "/api/prospects/oren-halloway/projections/lee-arden"
            })
    void the_team_itself_has_what_stands_there(String address) throws Exception {
        assertThat(guests.get(address, "Authorization", bearer(THEIRS)).statusCode())
                .isEqualTo(200);
        assertThat(guests.get(address, "Authorization", bearer(OURS)).statusCode())
                .isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SELECT * { ?s ?p ?o FILTER(CONTAINS(STR(?s), \"halloway\") || CONTAINS(STR(?o), \"Halloway\")) }",
                "SELECT * { GRAPH ?g { ?s ?p ?o } }",
                "SELECT * FROM <file:../harrow-vale/accounts.json> { ?s ?p ?o }"
            })
    void no_query_reaches_into_another_folder(String query) throws Exception {
        String address = "/sparql?query=" + URLEncoder.encode(query, StandardCharsets.UTF_8);
        HttpResponse<String> ours = guests.get(address, "Authorization", bearer(OURS), "Accept", "text/csv");

        assertThat(ours.body().replace(query, "")).doesNotContainIgnoringCase("halloway");
        assertThat(ours.body().lines().count()).isLessThanOrEqualTo(1);
    }

    @Test
    void a_change_with_ids_of_another_team_changes_nothing_there() throws Exception {
        long before = ARCHIVES.get(0).store().revision();
        String us = bearer(OURS);

        assertThat(guests.ask("DELETE", "/api/reps/oren-halloway/mill-night/r1", "", "", "Authorization", us)
                        .statusCode())
                .isEqualTo(404);
        assertThat(guests.ask("POST", "/api/undo?revision=1", "", "", "Authorization", us)
                        .statusCode())
                .as("our own first change")
                .isEqualTo(200);
        taken(guests.ask("POST", "/api/import", "text/csv", FILM, "Authorization", us));
        assertThat(ARCHIVES.get(0).store().revision()).isEqualTo(before);
        taken(guests.ask("POST", "/api/undo", "", "", "Authorization", us));
        taken(guests.ask("POST", "/api/import", "text/csv", OUR_FILM, "Authorization", us));
    }

    @Test
    void each_administrator_reads_the_record_of_his_own_team_and_a_team_that_is_not_served_has_none() throws Exception {
        guests.signIn(THEIRS, "not these words");

        assertThat(guests.get("/api/audit", "Authorization", bearer(THEIRS)).body())
                .contains(THEIRS)
                .doesNotContain(OURS);
        assertThat(guests.get("/api/audit", "Authorization", bearer(OURS)).body())
                .contains(OURS)
                .doesNotContain(THEIRS);
        assertThat(guests.get("/api/prospects", "Authorization", bearer("Lost Soul"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(guests.get("/api/prospects").statusCode()).isEqualTo(401);
    }

    private static String filled(String path, boolean unknown) {
        String filled = path;
        for (Map.Entry<String, String> part : PARTS.entrySet()) {
            boolean isOfBook = part.getKey().equals("slug") || part.getKey().equals("finding");
            filled = filled.replace("{" + part.getKey() + "}", unknown && !isOfBook ? NOBODYS : part.getValue());
        }
        return filled;
    }

    /** Parameters that name the other team's people, where a route takes any. */
    private static String query(boolean whole, boolean unknown) {
        if (!whole) {
            return "?q=power&query=ASK%7B%7D&video=a.mp4&since=mill-night"
                    .replace("mill-night", unknown ? NOBODYS : "mill-night");
        }
        String who = unknown ? NOBODYS : "oren-halloway";
        String by = unknown ? NOBODYS : "lee-arden";
        return "?prospect=" + who + "&id=" + who + "&id=silas-penhallow&first=" + by + "&second=jo-fenwick&by=" + by
                + "&q=power&where=evaluator:" + by + "&query=ASK%7B%7D&game=" + (unknown ? NOBODYS : "mill-night");
    }

    /** What is said, without the id that was asked for. */
    private static String same(String body) {
        return body.replaceAll("(?i)oren-halloway|mill-night|lee-arden|halloway-asked|" + NOBODYS, "X")
                .replaceAll("\"when\":\"[^\"]*\"", "")
                .replaceAll("\\b(r1|nobodys)\\b", "X");
    }

    private static String bearer(String name) {
        return "Bearer " + guests.accounts.token(name, "a test", java.util.Optional.empty());
    }

    private static void taken(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isIn(200, 201, 202);
    }
}
