package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rushlight.accounts.Role;
import rushlight.archive.Archive;

/**
 * Every operation of the description is asked by nobody and by each role. What may be asked of it stands in the description
 * alone: an operation without {@code x-role}, and a route without an operation, fail here and answer to nobody.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RolesTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String ANYONE = "anyone";
    private static final Map<Role, String> TOKENS = new EnumMap<>(Role.class);

    @TempDir
    private static Path folder;

    private static Archive archive;
    private static Guests guests;

    @BeforeAll
    static void start() {
        archive = Archive.open(folder);
        guests = Guests.of(archive, folder, Guests.PLENTY, false);
        for (Role role : Role.values()) {
            TOKENS.put(role, guests.token(role));
        }
    }

    @AfterAll
    static void stop() {
        guests.close();
        archive.close();
    }

    static List<Arguments> operations() throws IOException {
        List<Arguments> all = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : description().get("paths").properties()) {
            for (Map.Entry<String, JsonNode> method : path.getValue().properties()) {
                all.add(Arguments.of(
                        method.getKey().toUpperCase(Locale.ROOT),
                        path.getKey(),
                        method.getValue().path("x-role").asText()));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("operations")
    void an_operation_answers_to_those_its_role_names_and_to_nobody_else(String method, String path, String role)
            throws Exception {
        assertThat(role.equals(ANYONE) || Role.of(role).isPresent())
                .as("%s %s says in openapi.json with x-role who may ask for it: anyone, %s", method, path, Role.words())
                .isTrue();
        String address = path.replaceAll("\\{[^}]*}", "nix");

        HttpResponse<String> toNobody = guests.ask(method, address, "", "");
        if (role.equals(ANYONE)) {
            assertThat(toNobody.statusCode()).isNotIn(401, 403);
        } else {
            assertThat(toNobody.statusCode()).as("nobody: " + toNobody.body()).isEqualTo(401);
            assertThat(toNobody.headers().firstValue("WWW-Authenticate")).isPresent();
        }
        for (Role mine : Role.values()) {
            int status = guests.ask(method, address, "", "", "Authorization", "Bearer " + TOKENS.get(mine))
                    .statusCode();
            if (Role.of(role).filter(needed -> !mine.covers(needed)).isPresent()) {
                assertThat(status).as(mine.word()).isEqualTo(403);
            } else {
                assertThat(status).as(mine.word()).isNotIn(401, 403).isLessThan(500);
            }
        }
    }

    @Test
    void every_route_has_a_rule_and_whatever_changes_something_is_not_for_readers() throws IOException {
        Rules rules = Rules.described();

        for (Route route : Server.routes(archive, false, new Jobs(), new Meters())) {
            Rule rule = rules.of(route);
            assertThat(rule).as("x-role of %s %s", route.method(), route.path()).isNotEqualTo(Rule.CLOSED);
            if (List.of("DELETE", "PUT").contains(route.method().name())) {
                assertThat(rule.role())
                        .as("%s %s", route.method(), route.path())
                        .contains(Role.EVALUATOR);
            }
        }
        // What is sent and yet only asks.
        assertThat(operations())
                .filteredOn(one -> one.get()[0].equals("POST") && one.get()[2].equals("reader"))
                .extracting(one -> one.get()[1])
                .containsExactlyInAnyOrder(
                        "/api/ask",
                        "/api/classify",
                        "/api/import/check",
                        "/api/notes",
                        "/api/notes/log",
                        "/api/prospects/{id}/plan",
                        "/api/prospects/{id}/plan/check",
                        "/api/prospects/{id}/report/preview",
                        "/sparql");
    }

    @Test
    void a_new_route_that_nobody_gave_a_rule_is_closed_to_everybody() throws IOException {
        ObjectNode description = (ObjectNode) description();
        ((ObjectNode) description.at("/paths/~1api~1board/get")).remove("x-role");
        ((ObjectNode) description.at("/paths/~1api~1logs/get")).put("x-role", "everybody");
        Rules rules = Rules.of(description);

        assertThat(rules.of(Route.get("/api/board", ctx -> {}))).isEqualTo(Rule.CLOSED);
        assertThat(rules.of(Route.get("/api/logs", ctx -> {}))).isEqualTo(Rule.CLOSED);
        assertThat(rules.of(Route.get("/api/quite-new", ctx -> {}))).isEqualTo(Rule.CLOSED);
        assertThat(Rule.CLOSED.role()).isEqualTo(Optional.empty());
        assertThat(Rule.CLOSED.anyone()).isFalse();
    }

    private static JsonNode description() throws IOException {
        try (InputStream in = RolesTest.class.getResourceAsStream(Rules.DESCRIPTION)) {
            return JSON.readTree(in);
        }
    }
}
