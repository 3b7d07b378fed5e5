package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;

/** A server that is told to stop (SIGTERM) while film is being imported finishes that, and nothing is lost or half done. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class StoppingTest {
    /** What Java answers when a signal ended it: 128 and the signal's number, after everything was put in order. */
    private static final int ENDED_BY_SIGTERM = 128 + 15;

    private static final int GAMES = 40;
    private static final int REPS = 60;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    private Path work;

    @Test
    void an_import_that_was_begun_is_whole_and_the_folder_is_free() throws Exception {
        String season = season();
        Process server = serve();
        try (BufferedReader told = server.inputReader(StandardCharsets.UTF_8)) {
            String address = address(told);
            assertThat(Said.to(
                                    "ask",
                                    "who wins?",
                                    "--data",
                                    work.resolve("data").toString())
                            .err())
                    .as("the folder is held, and where it is shown is known")
                    .contains("is in use by process " + server.pid() + " ", "a server at " + address + ". ");
            HttpResponse<String> begun = CLIENT.send(
                    HttpRequest.newBuilder(URI.create(address + "api/import?name=season.csv"))
                            .headers("Content-Type", "text/csv", "Prefer", "respond-async")
                            .POST(BodyPublishers.ofString(season))
                            .build(),
                    BodyHandlers.ofString());
            assertThat(begun.statusCode()).isEqualTo(202);
            assertThat(begun.body()).contains("\"running\"");
            server.destroy();

            assertThat(server.waitFor(120, TimeUnit.SECONDS)).isTrue();
        } finally {
            server.destroyForcibly();
        }
        assertThat(server.exitValue()).isEqualTo(ENDED_BY_SIGTERM);
        List<String> log = Files.readAllLines(work.resolve("err"));
        assertThat(log.get(log.size() - 1)).contains("\"event\":\"stopped\"");
        assertThat(log).anyMatch(l -> l.contains("\"route\":\"/api/import\",\"status\":202"));
        assertThat(log).noneMatch(l -> l.contains("Exception"));
        try (Archive archive = Archive.open(work.resolve("data"))) {
            assertThat(archive.lag()).isZero();
            assertThat(archive.logs()).hasSize(GAMES);
            int reps = archive.watch(film -> film.size());
            assertThat(reps).isEqualTo(GAMES * REPS);
            assertThat(archive.store().revision()).as("one change").isEqualTo(1);
        }
    }

    /** Games of one player, enough that their import is not done when the server is told to stop. */
    private static String season() {
        StringBuilder csv =
                new StringBuilder("rep,prospect,game,phase,exchange,second_move_time,result,faults,evaluator\n");
        for (int game = 0; game < GAMES; game++) {
            for (int rep = 0; rep < REPS; rep++) {
                csv.append('r').append(rep).append(",Jory Penwick,Game ").append(game);
                csv.append(",pass-rush,long-arm > [sits-down] > arm-over > flatten,yes,won,,A. Beck\n");
            }
        }
        return csv.toString();
    }

    private Process serve() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "rushlight.cli.Main",
                        "serve",
                        "--log",
                        "json",
                        "--port",
                        "0",
                        "--data",
                        work.resolve("data").toString())
                .redirectError(work.resolve("err").toFile())
                .start();
    }

    private static String address(BufferedReader told) throws IOException {
        String line = told.readLine();
        assertThat(line).as("what the server says first").contains(" at http://localhost:");
        return line.substring(line.indexOf("http://"));
    }
}
