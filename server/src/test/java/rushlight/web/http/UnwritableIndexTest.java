package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;

/** While the server runs its index can be written no more: the film is kept, nobody is shown old film, and it mends itself. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class UnwritableIndexTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String HEADER = "rep,prospect,game,phase,exchange,result,evaluator\n";

    @TempDir
    private Path folder;

    @Test
    void what_the_index_cannot_follow_is_stored_and_told_and_caught_up_without_a_hand() throws Exception {
        try (Archive archive = Archive.open(folder);
                Server server = Server.start(archive, 0, false)) {
            assertThat(send(server, "r1,Jory Penwick,Opener,pass-rush,rip,won,Eyes\n")
                            .statusCode())
                    .isEqualTo(200);
            // A file where the folder was stands in for a disk that takes nothing more; it stops an administrator, too.
            Files.move(folder.resolve("index"), folder.resolve("elsewhere"));
            Files.writeString(folder.resolve("index"), "in the way");

            HttpResponse<String> stored = send(server, "r1,Teo Second,Opener,pass-rush,rip,won,Eyes\n");

            assertThat(stored.statusCode()).as(stored.body()).isEqualTo(507);
            assertThat(stored.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
            assertThat(stored.body()).contains("The film is stored and nothing is lost", "catches up by itself");
            assertThat(get(server, "/api/prospects").statusCode()).isEqualTo(507);

            Files.delete(folder.resolve("index"));

            HttpResponse<String> again = get(server, "/api/prospects");
            assertThat(again.statusCode()).isEqualTo(200);
            assertThat(again.body()).contains("Jory Penwick", "Teo Second");
            assertThat(send(server, "r1,Third Man,Opener,pass-rush,rip,won,Eyes\n")
                            .statusCode())
                    .isEqualTo(200);
        }
    }

    private static HttpResponse<String> send(Server server, String rows) throws Exception {
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + "/api/import?add=true"))
                        .header("Content-Type", "text/csv")
                        .POST(BodyPublishers.ofString(HEADER + rows))
                        .build(),
                BodyHandlers.ofString());
    }

    private static HttpResponse<String> get(Server server, String address) throws Exception {
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + address))
                        .build(),
                BodyHandlers.ofString());
    }
}
