package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;

/**
 * Two thousand requests that nobody in his right mind sends, from one seed: spoilt JSON, CSV, captions and SPARQL, addresses that
 * climb, headers that lie, bodies too long. None breaks the server, none is told how it is built or where it stands.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class HostileRequestsTest {
    private static final int EACH = 250;
    private static final int AT_ONCE = 4;
    private static final int SHORT = 200;

    /** Not known, took too long, another HTTP: said on purpose. */
    private static final List<Integer> NO_FAULT = List.of(501, 503, 505);

    private static final int WAIT_MILLIS = 20_000;
    private static final String REP = "/api/reps/oren-halloway/mill-night/r1";
    private static final String FILM = """
            rep,prospect,game,phase,alignment,exchange,result
            r1,Oren Halloway,Mill Night,pass-rush,technique-9,bull-rush > [sits-down] > rip,won
            """;

    private static final List<String> SENT_AS_JSON = List.of(
            "POST /api/ask",
            "POST /api/classify",
            "POST /api/reps",
            "PUT " + REP,
            "POST /api/notes/log",
            "POST /api/notes/opinions",
            "POST /api/cross-check/reconcile",
            "PUT /api/questions/power",
            "PUT /api/notes/decisions/a-txt",
            "PUT /api/prospects/oren-halloway/projections/kim-orr",
            "PUT /api/prospects/oren-halloway/report",
            "POST /api/session",
            "PUT /api/session/password");
    private static final List<String> BODIES = List.of(
            "{\"question\": \"edge players who win with power\", \"limit\": 2}",
            "{\"cells\": {\"rep\": \"r1\", \"prospect\": \"Oren Halloway\", \"game\": \"Mill Night\", \"phase\":"
                    + " \"pass-rush\", \"exchange\": \"bull-rush\"}, \"charted\": [\"faults\"]}",
            "{\"name\": \"a.txt\", \"text\": \"[0:04] Wide 9. Dip. Sack.\", \"prospect\": \"Oren Halloway\", \"game\":"
                    + " \"Mill Night\", \"accepted\": [\"r1/dip\"], \"phases\": {\"1\": \"run\"}}",
            "{\"prospect\": \"oren-halloway\", \"game\": \"mill-night\", \"rep\": \"r1\", \"first\": {\"evaluator\":"
                    + " \"a\", \"etag\": \"x\"}, \"second\": {\"evaluator\": \"b\", \"etag\": \"y\"}, \"choices\": {}}",
            "{\"evaluator\": \"Kim Orr\", \"readiness\": \"Now.\", \"scale\": \"rounds\", \"tier\": \"third\"}",
            "{\"summary\": \"Long arms.\", \"parts\": [\"summary\"], \"author\": \"Kim Orr\"}",
            "{\"name\": \"Kim Orr\", \"password\": \"four words in a row\"}");
    private static final List<String> SPITE = List.of(
            "null",
            "[]",
            "{}",
            "\"\"",
            "-1",
            "1e999",
            "99999999999999999999",
            "\u0000",
            "\ud800",
            "\u202e",
            "\"",
            "\\",
            "{",
            "}",
            "[[[[[[[[",
            ",",
            ":",
            "true",
            "../../../../etc/passwd",
            "%00",
            "%2e%2e%2f",
            "'; DROP TABLE reps; --",
            "<script>alert(1)</script>",
            "${jndi:ldap://x}",
            "{{7*7}}",
            "=cmd|' /C calc'!A0",
            "\r\nSet-Cookie: a=b",
            "\ufeff",
            "\u0130",
            "NaN",
            "{\"$ref\": \"#\"}",
            "a".repeat(3_000));
    private static final List<String> QUERIES = List.of(
            "SELECT * { ?s ?p ?o } LIMIT 3",
            "ASK { ?s a ?c }",
            "DESCRIBE <https://rushlight.example/id/bull-rush>",
            "CONSTRUCT { ?s ?p ?o } WHERE { ?s ?p ?o } LIMIT 2",
            "SELECT * { SERVICE <http://127.0.0.1:9/sparql> { ?s ?p ?o } }",
            "SELECT * { SERVICE SILENT <http://127.0.0.1:9/sparql> { ?s ?p ?o } }",
            "SELECT * FROM <file:/etc/passwd> { ?s ?p ?o }",
            "SELECT * { GRAPH <file:/etc/passwd> { ?s ?p ?o } }",
            "LOAD <file:/etc/passwd>",
            "DELETE WHERE { ?s ?p ?o }",
            "INSERT DATA { <x:a> <x:b> 1 }",
            "DROP ALL",
            "SELECT (<java:com.example.Leave>(1) AS ?x) {}",
            "SELECT * { ?x <java:com.example.Leave> ?y }",
            "SELECT * { BIND(<http://jena.apache.org/ARQ/function#version>() AS ?x) }",
            "ASK { FILTER(REGEX(\"" + "a".repeat(60) + "!\", \"^(a|aa)+$\")) }",
            "ASK { FILTER(REPLACE(\"" + "a".repeat(60) + "!\", \"(a+)+$\", \"b\") = \"c\") }",
            "SELECT (COUNT(*) AS ?n) { ?a ?b ?c . ?d ?e ?f } LIMIT 1",
            "SELECT * { ?s <x:p>*/<x:q>* ?o }",
            "SELECT * {".repeat(300) + "}".repeat(300));

    private final Random random = new Random(20251004);
    private final HttpClient client =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();

    /** One request and what came of it. */
    private record Answered(String request, int status, String text) {
        String shortly() {
            return request.substring(0, Math.min(SHORT, request.length())) + " => " + status + " "
                    + text.substring(0, Math.min(2 * SHORT, text.length()));
        }
    }

    @Test
    void two_thousand_hostile_requests_break_nothing_and_learn_nothing(@TempDir Path folder) throws Exception {
        List<Callable<Answered>> requests = new ArrayList<>();
        List<Answered> answers = new ArrayList<>();
        try (Archive archive = Archive.open(folder);
                Server server = Server.start(archive, 0, false)) {
            String at = "http://localhost:" + server.port();
            assertThat(asked(at, "POST", "/api/import", "text/csv", FILM.getBytes(StandardCharsets.UTF_8))
                            .status())
                    .isEqualTo(200);
            for (int i = 0; i < EACH; i++) {
                requests.add(json(at));
                requests.add(csv(at));
                requests.add(captions(at));
                requests.add(sparql(at, i));
                requests.add(address(server.port()));
                requests.add(parameters(at));
                requests.add(headers(server.port()));
                requests.add(raw(server.port()));
            }
            Collections.shuffle(requests, random);
            ExecutorService some = Executors.newFixedThreadPool(AT_ONCE);
            try {
                for (Future<Answered> answer : some.invokeAll(requests)) {
                    answers.add(answer.get());
                }
            } finally {
                some.shutdownNow();
            }
            assertThat(asked(at, "GET", "/api/health", "", new byte[0]).status())
                    .as("it still answers")
                    .isEqualTo(200);
        }
        assertThat(answers).hasSize(8 * EACH);
        assertThat(answers.stream()
                        .filter(one -> one.status() >= 500 && !NO_FAULT.contains(one.status()))
                        .map(Answered::shortly)
                        .distinct()
                        .limit(12))
                .as("faults of the server")
                .isEmpty();
        List<String> inside = List.of(
                folder.toString(),
                System.getProperty("user.dir"),
                System.getProperty("java.home"),
                "Exception",
                "java.lang",
                "java.util",
                "org.eclipse",
                "com.fasterxml",
                "org.apache",
                "rushlight.web",
                "rushlight.archive",
                "\tat ",
                ".java:",
                "(class ",
                "root:x:");
        assertThat(answers.stream()
                        .filter(one -> inside.stream().anyMatch(one.text()::contains))
                        .map(Answered::shortly)
                        .distinct()
                        .limit(12))
                .as("what tells how the server is built, or where it stands")
                .isEmpty();
        assertThat(answers).extracting(Answered::status).contains(200, 400, 404, 415, 422, 431);
    }

    private Callable<Answered> json(String at) {
        String[] target = any(SENT_AS_JSON).split(" ", 2);
        byte[] body = spoilt(any(BODIES));
        return () -> asked(at, target[0], target[1], "application/json", body);
    }

    private Callable<Answered> csv(String at) {
        byte[] body = random.nextInt(60) == 0 ? "a,".repeat(700_000).getBytes(StandardCharsets.UTF_8) : spoilt(FILM);
        String path = any(List.of("/api/import", "/api/import/check"))
                + any(List.of(
                        "", "?name=../../x.csv", "?evaluator=%00", "?numbering=Z", "?mode=both", "?keepGood=true"));
        String type =
                any(List.of("text/csv", "text/csv; charset=utf-16", "text/plain", "multipart/form-data", "image/png"));
        return () -> asked(at, "POST", path, type, body);
    }

    private Callable<Answered> captions(String at) {
        byte[] body = spoilt(any(List.of(
                "WEBVTT\n\n00:04.000 --> 00:09.000\nWide 9. Chop, dip. Sack.\n",
                "1\n00:00:04,000 --> 00:00:09,000\nFive tech. Bull rush, stoned.\n",
                "[0:04] Wide 9. Chop, dip.\n[99:99:99] Sack.\n",
                "WEBVTT\n\n99999999999:00.000 --> 00:00.000\n<v <v <c>>\n")));
        String type = any(List.of("text/vtt", "application/x-subrip", "text/plain", "multipart/form-data; boundary="));
        String path = "/api/notes?name=" + any(List.of("a.vtt", "..%2f..%2fa.srt", "%00"));
        return () -> asked(at, "POST", path, type, body);
    }

    private Callable<Answered> sparql(String at, int i) {
        String query = i < QUERIES.size()
                ? QUERIES.get(i)
                : new String(spoilt(any(QUERIES.subList(0, 15))), StandardCharsets.UTF_8);
        return random.nextBoolean()
                ? () -> asked(
                        at, "GET", "/sparql?query=" + URLEncoder.encode(query, StandardCharsets.UTF_8), "", new byte[0])
                : () -> asked(
                        at, "POST", "/sparql", "application/sparql-query", query.getBytes(StandardCharsets.UTF_8));
    }

    /** Addresses as no client library would send them. */
    private Callable<Answered> address(int port) {
        String start = any(List.of(
                "/",
                "/api/",
                "/clips/",
                "/id/",
                "/api/reps/",
                "/api/prospects/",
                "/api/concepts/",
                "/api/jobs/",
                "/api/notes/decisions/",
                "/parts/",
                "/technique/"));
        StringBuilder path = new StringBuilder(start);
        for (int i = random.nextInt(6); i >= 0; i--) {
            path.append(any(List.of(
                    "..",
                    "%2e%2e",
                    "..%2f",
                    "%2f",
                    "//",
                    "/",
                    ";a=b",
                    "%00",
                    "%",
                    "%zz",
                    "%c0%ae",
                    "\\",
                    "index.html",
                    "etc/passwd",
                    "accounts.json",
                    "audit.jsonl",
                    "report.pdf",
                    "clips.vtt",
                    "a".repeat(2_500),
                    "{id}",
                    "*",
                    "?",
                    "#",
                    "%F0%9F%8F%88")));
        }
        return wire(
                port,
                any(List.of("GET", "GET", "HEAD", "PUT", "DELETE", "PATCH", "TRACE", "BREW")) + " " + path
                        + " HTTP/1.1\r\nHost: localhost\r\n\r\n");
    }

    private Callable<Answered> parameters(String at) {
        String route = any(List.of(
                "/api/reps",
                "/api/board",
                "/api/compare",
                "/api/ask",
                "/api/complete",
                "/api/concepts",
                "/api/suggest",
                "/api/changes",
                "/api/audit",
                "/api/cross-check",
                "/api/prospects/oren-halloway/assessment",
                "/api/prospects/oren-halloway/flow.svg",
                "/api/prospects/oren-halloway/clips.vtt",
                REP + "/explanation",
                "/api/prospects/oren-halloway/progress"));
        StringBuilder query = new StringBuilder("?");
        for (int i = random.nextInt(5); i >= 0; i--) {
            query.append(any(List.of(
                            "limit",
                            "offset",
                            "q",
                            "where",
                            "sort",
                            "id",
                            "game",
                            "over",
                            "finding",
                            "first",
                            "second",
                            "by",
                            "since",
                            "prospect",
                            "kind",
                            "column",
                            "paper",
                            "video",
                            "reps",
                            "revision")))
                    .append('=')
                    .append(URLEncoder.encode(any(SPITE), StandardCharsets.UTF_8))
                    .append('&');
        }
        return () -> asked(at, "GET", route + query, "", new byte[0]);
    }

    private Callable<Answered> headers(int port) {
        String header = any(List.of(
                "Accept: " + "a/b;q=x,".repeat(200),
                "Accept: \u0001",
                "Range: bytes=99999999999999999999-",
                "Range: bytes=-0",
                "If-Match: \"" + "x".repeat(500) + "\"",
                "If-None-Match: *",
                "Cookie: rushlight=" + "y".repeat(4_000),
                "Cookie: =;;;\"",
                "Authorization: Bearer ",
                "Authorization: Basic Zm9v",
                "Content-Type: ;;;",
                "Prefer: respond-async,,,",
                "Host: elsewhere.example",
                "X-Forwarded-For: 127.0.0.1",
                "Origin: null",
                "Sec-Fetch-Site: cross-site",
                "X-Long: " + "z".repeat(20_000),
                "Accept-Encoding: gzip;q=9999",
                "Transfer-Encoding: chunked, chunked",
                "Expect: 999-nothing",
                "Content-Length: -5",
                "Content-Length: 18446744073709551616",
                "Bad Header",
                ": empty",
                "Upgrade: websocket\r\nConnection: Upgrade"));
        String method = any(List.of("GET", "GET", "POST", "PUT"));
        String path =
                any(List.of("/api/prospects", REP, "/sparql?query=ASK%7B%7D", "/id/bull-rush", "/", "/api/import"));
        return wire(port, method + " " + path + " HTTP/1.1\r\nHost: localhost\r\n" + header + "\r\n\r\n");
    }

    private Callable<Answered> raw(int port) {
        return wire(
                port,
                any(List.of(
                        "GET / HTTP/9.9\r\n\r\n",
                        "GET /\r\n\r\n",
                        "\r\n\r\n\r\n",
                        "\u0016\u0003\u0001\u0002",
                        "GET http://elsewhere.example/ HTTP/1.1\r\nHost: localhost\r\n\r\n",
                        "GET /api/prospects HTTP/1.1\r\n\r\n",
                        "GET /api/prospects HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n",
                        "CONNECT elsewhere.example:443 HTTP/1.1\r\nHost: x\r\n\r\n",
                        "POST /api/import HTTP/1.1\r\nHost: localhost\r\nContent-Type: text/csv\r\nTransfer-Encoding: chunked\r\n\r\nzz\r\n",
                        "POST /api/ask HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 3\r\n\r\n{}x",
                        "GET /" + "a".repeat(9_000) + " HTTP/1.1\r\nHost: localhost\r\n\r\n",
                        "OPTIONS * HTTP/1.1\r\nHost: localhost\r\n\r\n",
                        "GET /api/prospects HTTP/1.1\r\nHost: localhost\r\n folded: x\r\n\r\n",
                        "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n")));
    }

    /** Writes bytes as they are and reads until the server is done with them. */
    private Callable<Answered> wire(int port, String request) {
        return () -> {
            try (Socket socket = new Socket("localhost", port)) {
                socket.setSoTimeout(WAIT_MILLIS);
                socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
                socket.shutdownOutput();
                ByteArrayOutputStream answer = new ByteArrayOutputStream();
                try (InputStream in = socket.getInputStream()) {
                    in.transferTo(answer);
                } catch (IOException closed) {
                    return new Answered(request, 0, answer.toString(StandardCharsets.UTF_8));
                }
                String text = answer.toString(StandardCharsets.UTF_8);
                int status = text.startsWith("HTTP/1.1 ") ? Integer.parseInt(text.substring(9, 12)) : 0;
                return new Answered(request, status, text);
            }
        };
    }

    private Answered asked(String at, String method, String path, String type, byte[] body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(at + path))
                .timeout(Duration.ofMillis(WAIT_MILLIS))
                .method(method, body.length == 0 ? BodyPublishers.noBody() : BodyPublishers.ofByteArray(body));
        if (!type.isEmpty()) {
            request.header("Content-Type", type);
        }
        if (method.equals("PUT")) {
            request.header("If-Match", "\"nix\"");
        }
        var answer = client.send(request.build(), BodyHandlers.ofString());
        return new Answered(
                method + " " + path + " " + new String(body, 0, Math.min(300, body.length), StandardCharsets.UTF_8),
                answer.statusCode(),
                answer.body());
    }

    /** A body with some of it taken out, put in twice, or replaced by what hurts. */
    private byte[] spoilt(String good) {
        StringBuilder text = new StringBuilder(good);
        for (int i = random.nextInt(4); i >= 0; i--) {
            int from = random.nextInt(text.length() + 1);
            int to = Math.min(text.length(), from + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> text.delete(from, to);
                case 1 -> text.insert(from, text.substring(from, to));
                case 2 -> text.replace(from, to, any(SPITE));
                default -> value(text);
            }
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (bytes.length > 0 && random.nextInt(5) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** Replaces a whole value by another kind of one, so that the rest can still be read. */
    private void value(StringBuilder text) {
        int colon = text.indexOf(": ", random.nextInt(text.length() + 1));
        int end = colon < 0 ? -1 : text.indexOf(",", colon);
        if (end > 0) {
            text.replace(
                    colon + 2, end, any(List.of("null", "[]", "{}", "7", "[[1]]", "true", "\"\"", "{\"a\": null}")));
        }
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
