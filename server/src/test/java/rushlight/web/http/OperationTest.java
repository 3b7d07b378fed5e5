package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;

/** Whoever runs the server for others sees how it fares, and not whom they looked at. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class OperationTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final Contract CONTRACT = new Contract();
    private static final String REPS = """
            rep,prospect,game,opponent,phase,exchange,second_move_time,result,evaluator
            r1,Jory Penwick,at Calder Mill,Calder Mill,pass-rush,bull-rush > [sits-down],yes,lost,A. Beck
            r2,Jory Penwick,at Calder Mill,Calder Mill,pass-rush,bull-rush > [sits-down],yes,lost,A. Beck
            """;

    @TempDir
    private Path folder;

    private final List<String> log = new CopyOnWriteArrayList<>();
    private Archive archive;
    private Server server;

    @BeforeEach
    void start() {
        archive = Archive.open(folder);
        server = Server.start(Serving.here(archive, 0, false), ServerLog.of(ServerLog.Form.JSON, log::add));
    }

    @AfterEach
    void stop() {
        server.close();
        archive.close();
    }

    @Test
    void a_request_is_measured_by_its_route_and_names_nobody() throws Exception {
        send("POST", "/api/import", REPS);
        get("/api/prospects/jory-penwick/assessment");
        get("/api/prospects/jory-penwick/assessment");
        get("/api/prospects/nobody-we-know");
        get("/technique/bull-rush");

        String metrics = metrics(4);

        assertThat(metrics)
                .containsPattern("rushlight_requests_seconds_count\\{method=\"GET\","
                        + "route=\"/api/prospects/\\{id}/assessment\",status=\"200\"} 2")
                .containsPattern("rushlight_requests_seconds_count\\{method=\"GET\","
                        + "route=\"/api/prospects/\\{id}\",status=\"404\"} 1")
                .containsPattern(
                        "rushlight_requests_seconds_count\\{method=\"GET\",route=\"\\(page\\)\",status=\"200\"} 1")
                .containsPattern("rushlight_requests_seconds_bucket\\{.*le=\"0.15\"} \\d");
        assertThat(metrics.toLowerCase(Locale.ROOT)).doesNotContain("jory", "penwick", "nobody", "beck", "calder");
    }

    @Test
    void the_film_and_the_machine_are_measured_too() throws Exception {
        send("POST", "/api/import", REPS);
        send("POST", "/api/import", REPS.replace("bull-rush", "bul-rsh"));

        assertThat(metrics(2))
                .contains(
                        "rushlight_film_revision 1.0",
                        "rushlight_film_reps 2.0",
                        "rushlight_film_prospects 1.0",
                        "rushlight_index_lag 0.0")
                .contains("rushlight_imports_seconds_count{outcome=\"stored\"} 1")
                .contains("rushlight_imports_seconds_count{outcome=\"refused\"} 1")
                .contains("jvm_memory_used_bytes{area=\"heap\"", "jvm_threads_live_threads", "jvm_gc_");
    }

    @Test
    void whatever_the_page_on_operation_says_to_watch_is_measured() throws Exception {
        send("POST", "/api/import", REPS);
        String metrics = metrics(1);
        String page = Files.readString(Path.of("../docs/operation.md"));

        List<String> names = Pattern.compile("`((rushlight|jvm|process)_[a-z_]+)")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();

        assertThat(names)
                .hasSizeGreaterThan(8)
                .allSatisfy(name -> assertThat(metrics).containsPattern("(?m)^" + name));
    }

    @Test
    void each_request_is_a_line_that_names_its_route_and_no_person() throws Exception {
        send("POST", "/api/import", REPS);
        HttpResponse<String> answer = get("/api/prospects/jory-penwick?over=left");
        get("/api/ask?q=who%20is%20Jory%20Penwick");
        awaitLines(3);

        JsonNode line = lines().stream()
                .filter(l -> l.get("route").asText().equals("/api/prospects/{id}"))
                .findFirst()
                .orElseThrow();
        assertThat(line.get("method").asText()).isEqualTo("GET");
        assertThat(line.get("status").asInt()).isEqualTo(answer.statusCode());
        assertThat(line.get("bytes").asInt()).isEqualTo(answer.body().length());
        assertThat(line.get("milliseconds").asDouble()).isBetween(0.0, 60_000.0);
        assertThat(line.get("request").asText())
                .isEqualTo(answer.headers().firstValue("X-Request-Id").orElseThrow());
        assertThat(Instant.parse(line.get("time").asText()))
                .isBefore(Instant.now().plusSeconds(1));
        assertThat(log)
                .allSatisfy(l ->
                        assertThat(l.toLowerCase(Locale.ROOT)).doesNotContain("jory", "penwick", "beck", "calder"));
    }

    @Test
    void a_proxys_name_for_a_request_is_kept_where_it_can_be_no_word() throws Exception {
        assertThat(id("4f1c09aa-77")).isEqualTo("4f1c09aa-77");
        assertThat(id("jory-penwick")).matches("[0-9a-f]{16}");
    }

    @Test
    void what_broke_is_told_by_its_kind_and_place_and_not_by_whom_it_struck() throws Exception {
        send("POST", "/api/import", REPS);
        archive.close();

        HttpResponse<String> answer = get("/api/prospects/jory-penwick/assessment");
        archive = Archive.open(folder);

        assertThat(answer.statusCode()).isEqualTo(500);
        String id = answer.headers().firstValue("X-Request-Id").orElseThrow();
        assertThat(answer.body()).contains("under request " + id);
        assertThat(log)
                .filteredOn(l -> l.contains("\"broke\""))
                .singleElement()
                .satisfies(l -> assertThat(l)
                        .contains(id, "/api/prospects/{id}/assessment", "rushlight.store.")
                        .doesNotContain("penwick"));
    }

    @Test
    void it_is_ready_while_the_index_has_all_of_the_film() throws Exception {
        send("POST", "/api/import", REPS);
        assertThat(get("/ready").statusCode()).isEqualTo(200);

        archive.store().reclassify(List.of(), "another book", Instant.EPOCH);

        HttpResponse<String> behind = get("/ready");
        assertThat(behind.statusCode()).isEqualTo(503);
        assertThat(behind.body()).contains("The index lacks 1 change of the film");
        assertThat(get("/health").statusCode()).isEqualTo(200);
        assertThat(get("/metrics").body()).contains("rushlight_index_lag 1.0");
    }

    /** The metrics, once so many answers are counted: an answer is measured after it was sent. */
    private String metrics(int lines) throws Exception {
        awaitLines(lines);
        return get("/metrics").body();
    }

    private void awaitLines(int lines) throws InterruptedException {
        for (int i = 0; i < 500 && log.size() < lines; i++) {
            Thread.sleep(10);
        }
        assertThat(log).hasSizeGreaterThanOrEqualTo(lines);
    }

    private List<JsonNode> lines() throws Exception {
        List<JsonNode> lines = new ArrayList<>();
        for (String line : log) {
            lines.add(JSON.readTree(line));
        }
        return lines;
    }

    private String id(String given) throws Exception {
        return get("/health", "X-Request-Id", given)
                .headers()
                .firstValue("X-Request-Id")
                .orElseThrow();
    }

    private HttpResponse<String> get(String address, String... headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(address(address));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return CLIENT.send(request.build(), BodyHandlers.ofString());
    }

    private void send(String method, String address, String body) throws Exception {
        CONTRACT.hold(
                method,
                address,
                CLIENT.send(
                        HttpRequest.newBuilder(address(address))
                                .header("Content-Type", "text/csv")
                                .method(method, BodyPublishers.ofString(body))
                                .build(),
                        BodyHandlers.ofByteArray()));
    }

    private URI address(String address) {
        return URI.create("http://localhost:" + server.port() + address);
    }
}
