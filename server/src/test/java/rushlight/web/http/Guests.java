package rushlight.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import rushlight.accounts.Accounts;
import rushlight.accounts.Role;
import rushlight.archive.Archive;

/** A server with accounts, and people who ask it. */
final class Guests implements AutoCloseable {
    static final String PASSWORD = "four words in a row";
    static final Serving.Limits PLENTY = new Serving.Limits(100_000, 100_000, 1_000);
    static final String OURS = "X-Requested-With";

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int QUICK = 4;

    final Accounts accounts;
    final Server server;
    private final HttpClient client = HttpClient.newHttpClient();

    private Guests(Accounts accounts, Server server) {
        this.accounts = accounts;
        this.server = server;
    }

    /** One data folder with a reader, an evaluator and an administrator of these names. */
    static Guests of(Archive archive, Path folder, Serving.Limits limits, boolean behindProxy) {
        Accounts accounts = Accounts.in(folder, QUICK, Clock.systemUTC());
        for (Role role : Role.values()) {
            if (accounts.user("The " + role.word()).isEmpty()) {
                accounts.add("The " + role.word(), "", role, PASSWORD.toCharArray());
            }
        }
        return new Guests(
                accounts,
                Server.start(serving(
                        List.of(new Serving.Team("", folder, archive)), accounts, folder, limits, behindProxy)));
    }

    /** A folder for each team, with the accounts there are. */
    static Guests of(List<Serving.Team> teams, Accounts accounts, Path folder) {
        return new Guests(accounts, Server.start(serving(teams, accounts, folder, PLENTY, false)));
    }

    /** Asks a server that runs already. */
    static Guests at(Server server, Accounts accounts) {
        return new Guests(accounts, server);
    }

    static Serving serving(
            List<Serving.Team> teams, Accounts accounts, Path folder, Serving.Limits limits, boolean behindProxy) {
        return new Serving(
                teams,
                Optional.of(new Serving.Entrance(accounts, folder)),
                "127.0.0.1",
                0,
                false,
                behindProxy,
                Optional.empty(),
                limits);
    }

    /** A token of somebody's. */
    String token(String name) {
        return accounts.token(name, "a test", Optional.empty());
    }

    /** A token of somebody with a role. */
    String token(Role role) {
        return token("The " + role.word());
    }

    HttpResponse<String> ask(String method, String path, String type, String body, String... headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + path))
                .method(method, body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body));
        if (!type.isEmpty()) {
            request.header("Content-Type", type);
        }
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    HttpResponse<String> get(String path, String... headers) throws Exception {
        return ask("GET", path, "", "", headers);
    }

    HttpResponse<String> signIn(String name, String password, String... headers) throws Exception {
        String body = JSON.writeValueAsString(java.util.Map.of("name", name, "password", password));
        return ask("POST", "/api/session", "application/json", body, headers);
    }

    /** The cookie that an answer sets, as a browser sends it back. */
    static String cookie(HttpResponse<?> answer) {
        return answer.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
    }

    static JsonNode json(HttpResponse<String> answer) throws Exception {
        return JSON.readTree(answer.body());
    }

    @Override
    public void close() {
        server.close();
    }
}
