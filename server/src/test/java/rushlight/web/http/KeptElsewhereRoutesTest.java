package rushlight.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;
import rushlight.archive.PlayedStore;
import rushlight.archive.SavedQuestions;

/** The film that is served is kept in a store elsewhere: what becomes of a change is answered as the interface describes it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class KeptElsewhereRoutesTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final Contract CONTRACT = new Contract();
    private static final String QUESTION = "/api/questions/power";

    @TempDir
    private Path home;

    @AutoClose
    private final PlayedStore store = PlayedStore.start();

    @Test
    void who_was_slower_than_another_folder_gets_409_and_the_film_as_it_is_now() throws Exception {
        try (Archive mine = open("mine");
                Archive his = open("his");
                Server server = Server.start(mine, 0, false)) {
            SavedQuestions.of(his).save("speed", "who wins with speed", "");

            HttpResponse<byte[]> late = save(server);

            assertThat(late.statusCode()).as(Contract.text(late)).isEqualTo(409);
            assertThat(Contract.text(late)).contains("Nothing of yours was stored", "do it again");
            CONTRACT.hold("PUT", QUESTION, late);
            HttpResponse<byte[]> again = save(server);
            assertThat(again.statusCode()).as(Contract.text(again)).isEqualTo(201);
            assertThat(SavedQuestions.of(mine).all()).hasSize(2);
        }
    }

    @Test
    void while_the_store_is_away_a_change_gets_503_and_is_nowhere() throws Exception {
        try (Archive mine = open("mine");
                Server server = Server.start(mine, 0, false)) {
            store.close();

            HttpResponse<byte[]> refused = save(server);

            assertThat(refused.statusCode()).as(Contract.text(refused)).isEqualTo(503);
            assertThat(Contract.text(refused)).contains("cannot be reached", "Nothing was changed");
            CONTRACT.hold("PUT", QUESTION, refused);
            assertThat(SavedQuestions.of(mine).all()).isEmpty();
        }
    }

    private Archive open(String folder) {
        return Archive.open(home.resolve(folder), store.place());
    }

    private static HttpResponse<byte[]> save(Server server) throws Exception {
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + QUESTION))
                        .header("Content-Type", "application/json")
                        .PUT(BodyPublishers.ofString("{\"question\": \"bull rush\"}"))
                        .build(),
                BodyHandlers.ofByteArray());
    }
}
