package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rushlight.accounts.Accounts;
import rushlight.accounts.Role;
import rushlight.archive.Archive;
import rushlight.archive.FolderException;

/** People sign in, work and sign out; others try to. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SigningInTest {
    private static final String JSON = "application/json";
    private static final String EVALUATOR = "The evaluator";
    private static final String CSV = "rep,prospect,game,phase,result\nr1,Oren Halloway,Mill Night,run,won\n";

    @TempDir
    private Path folder;

    @TempDir
    private static Path film;

    private static Archive archive;

    @BeforeAll
    static void open() {
        archive = Archive.open(film);
    }

    @AfterAll
    static void close() {
        archive.close();
    }

    @Test
    void a_session_is_begun_by_the_password_and_ends_when_one_signs_out() throws Exception {
        try (Guests guests = Guests.of(archive, folder, Guests.PLENTY, false)) {
            assertThat(Guests.json(guests.get("/api/session")).at("/signedIn").asBoolean())
                    .isFalse();
            assertThat(guests.get("/api/prospects").statusCode()).isEqualTo(401);
            assertThat(guests.get("/").statusCode())
                    .as("the pages themselves hold no film")
                    .isEqualTo(200);
            assertThat(Guests.json(guests.get("/api/health")).has("revision")).isFalse();

            HttpResponse<String> in = guests.signIn("the EVALUATOR", Guests.PASSWORD);
            assertThat(Guests.json(in).at("/name").asText()).isEqualTo(EVALUATOR);
            assertThat(in.headers().firstValue("Set-Cookie").orElse(""))
                    .contains("HttpOnly", "SameSite=Strict", "Path=/")
                    .doesNotContain("Secure");
            String cookie = Guests.cookie(in);
            HttpResponse<String> film = guests.get("/api/prospects", "Cookie", cookie);
            assertThat(film.statusCode()).isEqualTo(200);
            assertThat(film.headers().firstValue("Cache-Control")).contains("no-store");

            guests.ask("DELETE", "/api/session", "", "", "Cookie", cookie, Guests.OURS, "rushlight");
            assertThat(guests.get("/api/prospects", "Cookie", cookie).statusCode())
                    .isEqualTo(401);
            assertThat(guests.get("/api/prospects", "Authorization", "Bearer rl_nix")
                            .statusCode())
                    .isEqualTo(401);
        }
    }

    @Test
    void a_wrong_name_and_a_wrong_password_are_told_in_the_same_words() throws Exception {
        try (Guests guests = Guests.of(archive, folder, new Serving.Limits(1_000, 1_000, 3), false)) {
            HttpResponse<String> password = guests.signIn(EVALUATOR, "not these words");
            HttpResponse<String> name = guests.signIn("Nobody Of That Name", "not these words");
            assertThat(name.statusCode()).isEqualTo(password.statusCode()).isEqualTo(401);
            assertThat(name.body()).isEqualTo(password.body());

            for (String who : List.of(EVALUATOR, "Nobody Of That Name")) {
                guests.signIn(who, "not these words");
                guests.signIn(who, "not these words");
                HttpResponse<String> locked = guests.signIn(who, Guests.PASSWORD);
                assertThat(locked.statusCode()).as(who).isEqualTo(429);
                assertThat(Integer.parseInt(
                                locked.headers().firstValue("Retry-After").orElse("")))
                        .isBetween(1, 60);
                assertThat(locked.body()).doesNotContain(who);
            }
            assertThat(guests.signIn("The reader", Guests.PASSWORD).statusCode())
                    .as("others still sign in")
                    .isEqualTo(200);
        }
    }

    @Test
    void a_page_of_another_site_changes_nothing_with_the_cookie_of_the_victim() throws Exception {
        long before = archive.store().revision();
        try (Guests guests = Guests.of(archive, folder, Guests.PLENTY, false)) {
            String cookie = Guests.cookie(guests.signIn(EVALUATOR, Guests.PASSWORD));

            assertThat(guests.ask("POST", "/api/import", "text/csv", CSV, "Cookie", cookie)
                            .statusCode())
                    .as("without the header that only our pages send")
                    .isEqualTo(403);
            assertThat(guests.ask(
                                    "POST",
                                    "/api/import",
                                    "text/csv",
                                    CSV,
                                    "Cookie",
                                    cookie,
                                    Guests.OURS,
                                    "rushlight",
                                    "Origin",
                                    "https://elsewhere.example")
                            .statusCode())
                    .isEqualTo(403);
            assertThat(guests.ask(
                                    "POST",
                                    "/api/import",
                                    "text/csv",
                                    CSV,
                                    "Cookie",
                                    cookie,
                                    Guests.OURS,
                                    "rushlight",
                                    "Sec-Fetch-Site",
                                    "cross-site")
                            .statusCode())
                    .isEqualTo(403);
            assertThat(archive.store().revision()).isEqualTo(before);
            assertThat(guests.ask("POST", "/api/import", "text/csv", CSV, "Cookie", cookie, Guests.OURS, "rushlight")
                            .statusCode())
                    .isEqualTo(200);
            assertThat(archive.store().revision()).isEqualTo(before + 1);
            assertThat(Guests.json(guests.get("/api/changes", "Cookie", cookie))
                            .at("/changes/0/by")
                            .asText())
                    .as("whose account it was stands with the change")
                    .isEqualTo(EVALUATOR);
        }
    }

    @Test
    void one_changes_ones_own_password_and_other_sessions_end() throws Exception {
        try (Guests guests = Guests.of(archive, folder, Guests.PLENTY, false)) {
            String here = Guests.cookie(guests.signIn(EVALUATOR, Guests.PASSWORD));
            String there = Guests.cookie(guests.signIn(EVALUATOR, Guests.PASSWORD));
            String[] ours = {"Cookie", here, Guests.OURS, "rushlight"};

            assertThat(guests.ask(
                                    "PUT",
                                    "/api/session/password",
                                    JSON,
                                    "{\"old\": \"guessed it\", \"password\": \"other words in a row\"}",
                                    ours)
                            .statusCode())
                    .isEqualTo(422);
            HttpResponse<String> done = guests.ask(
                    "PUT",
                    "/api/session/password",
                    JSON,
                    "{\"old\": \"" + Guests.PASSWORD + "\", \"password\": \"other words in a row\"}",
                    ours);
            assertThat(done.statusCode()).isEqualTo(200);
            assertThat(guests.get("/api/prospects", "Cookie", there).statusCode())
                    .isEqualTo(401);
            assertThat(guests.get("/api/prospects", "Cookie", Guests.cookie(done))
                            .statusCode())
                    .isEqualTo(200);
            assertThat(guests.signIn(EVALUATOR, Guests.PASSWORD).statusCode()).isEqualTo(401);
        }
    }

    @Test
    void it_is_written_down_who_did_what_and_nothing_of_the_film_with_it() throws Exception {
        try (Guests guests = Guests.of(archive, folder, Guests.PLENTY, false)) {
            guests.signIn("my own password", "typed in the wrong field");
            guests.signIn(EVALUATOR, "not these words");
            String cookie = Guests.cookie(guests.signIn(EVALUATOR, Guests.PASSWORD));
            guests.ask("POST", "/api/import", "text/csv", CSV, "Cookie", cookie, Guests.OURS, "rushlight");
            guests.get("/api/prospects/oren-halloway", "Cookie", cookie);
            guests.get("/api/audit", "Cookie", cookie);

            JsonNode audit = Guests.json(
                    guests.get("/api/audit", "Authorization", "Bearer " + guests.token(Role.ADMINISTRATOR)));
            assertThat(audit.at("/entries"))
                    .extracting(one ->
                            one.get("who").asText() + " | " + one.get("what").asText() + " | "
                                    + one.get("outcome").asInt())
                    .containsExactly(
                            "The evaluator | GET /api/audit | 403",
                            "The evaluator | POST /api/import | 200",
                            "The evaluator | POST /api/session | 200",
                            "The evaluator | POST /api/session | 401",
                            " | POST /api/session | 401");
            assertThat(Files.readString(folder.resolve("audit.jsonl"), StandardCharsets.UTF_8))
                    .doesNotContainIgnoringCase("halloway")
                    .doesNotContain("my own password");
        }
    }

    @Test
    void whoever_asks_too_often_is_told_when_to_come_back() throws Exception {
        try (Guests guests = Guests.of(archive, folder, new Serving.Limits(30, 3, 5), false)) {
            String mine = "Bearer " + guests.token(Role.READER);
            for (int i = 0; i < 3; i++) {
                assertThat(guests.get("/sparql?query=ASK%7B%7D", "Authorization", mine)
                                .statusCode())
                        .isEqualTo(200);
            }
            HttpResponse<String> more = guests.get("/sparql?query=ASK%7B%7D", "Authorization", mine);
            assertThat(more.statusCode()).isEqualTo(429);
            assertThat(more.headers().firstValue("Retry-After")).isPresent();
            assertThat(guests.get("/api/prospects", "Authorization", mine).statusCode())
                    .isEqualTo(200);
            assertThat(guests.get("/sparql?query=ASK%7B%7D", "Authorization", "Bearer " + guests.token(Role.EVALUATOR))
                            .statusCode())
                    .as("another one has his own")
                    .isEqualTo(200);
        }
    }

    @Test
    void behind_a_proxy_its_word_is_believed_and_the_cookie_is_for_https_alone() throws Exception {
        try (Guests guests = Guests.of(archive, folder, Guests.PLENTY, true)) {
            HttpResponse<String> in = guests.signIn(
                    EVALUATOR,
                    Guests.PASSWORD,
                    "X-Forwarded-Proto",
                    "https",
                    "X-Forwarded-Host",
                    "film.example",
                    "X-Forwarded-For",
                    "198.51.100.9, 203.0.113.5",
                    "Origin",
                    "https://film.example");

            assertThat(in.statusCode()).isEqualTo(200);
            assertThat(in.headers().firstValue("Set-Cookie").orElse(""))
                    .startsWith("__Host-rushlight=")
                    .contains("Secure");
            assertThat(in.headers().firstValue("Strict-Transport-Security")).isPresent();
            assertThat(Files.readString(folder.resolve("audit.jsonl")))
                    .contains("203.0.113.5")
                    .doesNotContain("198.51.100.9");
        }
    }

    @Test
    void without_accounts_nothing_that_came_by_a_proxy_is_answered() throws Exception {
        Serving alone = Serving.here(archive, 0, false);
        try (Server server = Server.start(alone)) {
            java.net.http.HttpClient client = java.net.http.HttpClient.newHttpClient();
            java.net.http.HttpRequest request = java.net.http.HttpRequest.newBuilder(
                            java.net.URI.create(server.address() + "api/prospects"))
                    .header("X-Forwarded-For", "203.0.113.5")
                    .build();
            HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(421);
            assertThat(answer.body()).contains("--behind-proxy").doesNotContain("halloway");
        }
    }

    @Test
    void the_first_account_shuts_the_door_of_a_running_server() throws Exception {
        Accounts accounts = Accounts.in(folder, 4, Clock.systemUTC());
        Serving serving =
                Guests.serving(List.of(new Serving.Team("", folder, archive)), accounts, folder, Guests.PLENTY, false);
        try (Server server = Server.start(serving)) {
            Guests guests = Guests.at(server, accounts);
            assertThat(guests.get("/api/prospects").statusCode()).isEqualTo(200);
            assertThat(Guests.json(guests.get("/api/session")).at("/accounts").asBoolean())
                    .isFalse();

            accounts.add("Kim Orr", "", Role.READER, Guests.PASSWORD.toCharArray());
            assertThat(guests.get("/api/prospects").statusCode()).isEqualTo(401);

            Files.writeString(folder.resolve("accounts.json"), "torn");
            HttpResponse<String> torn = guests.get("/api/prospects");
            assertThat(torn.statusCode()).isEqualTo(503);
            assertThat(torn.body()).doesNotContain(folder.toString()).doesNotContain("accounts.json");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.0.0.0,   false, false, user add",
        "::,        false, false, user add",
        "0.0.0.0,   true,  false, user add",
        "127.0.0.1, true,  false, user add",
        "0.0.0.0,   false, true,  --certificate"
    })
    void it_is_not_served_to_others_without_accounts_nor_without_https(
            String bind, boolean proxy, boolean accounts, String told) {
        Accounts some = Accounts.in(folder, 4, Clock.systemUTC());
        if (accounts) {
            some.add("Kim Orr", "", Role.READER, Guests.PASSWORD.toCharArray());
        }
        Serving serving = new Serving(
                List.of(new Serving.Team("", folder, archive)),
                Optional.of(new Serving.Entrance(some, folder)),
                bind,
                0,
                false,
                proxy,
                Optional.empty(),
                Guests.PLENTY);

        assertThat(serving.refusal()).hasValueSatisfying(why -> assertThat(why).contains(told));
        assertThatThrownBy(() -> Server.start(serving)).isInstanceOf(FolderException.class);
    }
}
