package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rushlight.archive.PlayedFilm.copy;
import static rushlight.archive.PlayedFilm.film;
import static rushlight.archive.PlayedFilm.reps;
import static rushlight.archive.PlayedFilm.stopped;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.tdb2.DatabaseMgr;
import org.apache.jena.tdb2.TDB2;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The store on another machine fails: in no case has one side what the other has not, for longer than to the next opening. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class StoreAwayTest {
    @TempDir
    private Path home;

    @AutoClose
    private final PlayedStore store = PlayedStore.start();

    @ParameterizedTest
    @CsvSource({
        "500, is in trouble of its own",
        "503, is in trouble of its own",
        "401, lets nobody in who does not give the right name and password",
        "403, does not allow you to do that",
        "413, does not take so much at once",
        "405, not one that may be changed"
    })
    void a_change_the_store_does_not_take_is_nowhere(int status, String said) {
        try (Archive mine = Archive.open(home.resolve("mine"), store.place())) {
            mine.put(stopped("r1"), false);
            Set<String> before = store.film();
            store.beforeNextChange(() -> status);

            assertThatThrownBy(() -> mine.put(stopped("r2"), true))
                    .hasMessageContaining(said)
                    .hasMessageContaining("Nothing was changed");

            assertThat(store.film()).isEqualTo(before).isEqualTo(film(mine));
            mine.put(stopped("r3"), true);
            assertThat(reps(mine)).containsExactly("r1", "r3");
            assertThat(store.film()).isEqualTo(film(mine));
        }
    }

    @Test
    void without_the_store_the_film_can_be_read_and_nothing_changed() {
        try (Archive mine = Archive.open(home.resolve("mine"), store.place())) {
            mine.put(stopped("r1", "r2"), false);
        }
        store.close();

        try (Archive mine = Archive.open(home.resolve("mine"), PlayedStore.asBefore())) {
            assertThat(mine.following().notes())
                    .last()
                    .asString()
                    .contains("cannot be reached: nothing listens there")
                    .contains("You read the film as it was");
            assertThat(mine.assess("jory-penwick").orElseThrow().reps()).isEqualTo(2);
            assertThatThrownBy(() -> mine.put(stopped("r3"), true))
                    .hasMessageContaining("cannot be reached")
                    .hasMessageContaining("Nothing was changed");
            assertThat(reps(mine)).containsExactly("r1", "r2");
        }
    }

    @Test
    void a_change_whose_answer_was_lost_is_known_to_be_done() throws IOException {
        try (CutLine line = new CutLine(store.port());
                Archive mine = Archive.open(home.resolve("mine"), PlayedStore.at(line.address()))) {
            mine.put(stopped("r1"), false);
            line.cutNextAnswer(false);

            mine.put(stopped("r2"), true);

            assertThat(reps(mine)).containsExactly("r1", "r2");
            assertThat(store.film()).isEqualTo(film(mine));
        }
    }

    @Test
    void a_change_that_was_answered_with_trouble_after_it_was_made_is_known_to_be_done() {
        try (Archive mine = Archive.open(home.resolve("mine"), store.place())) {
            mine.put(stopped("r1"), false);
            store.afterNextChange(() -> 502);

            mine.put(stopped("r2"), true);

            assertThat(reps(mine)).containsExactly("r1", "r2");
            assertThat(store.film()).isEqualTo(film(mine));
        }
    }

    @Test
    void where_nobody_can_be_asked_what_became_of_a_change_the_folder_finds_out_once_it_can() throws IOException {
        try (CutLine line = new CutLine(store.port());
                Archive mine = Archive.open(home.resolve("mine"), PlayedStore.at(line.address()))) {
            mine.put(stopped("r1"), false);
            line.cutNextAnswer(true);

            assertThatThrownBy(() -> mine.put(stopped("r2"), true)).hasMessageContaining("Look before you do it again");
            assertThat(reps(mine)).containsExactly("r1");

            line.mend();
            mine.following().catchUp();
            assertThat(reps(mine)).containsExactly("r1", "r2");
            assertThat(mine.assess("jory-penwick").orElseThrow().reps()).isEqualTo(2);
            assertThat(store.film()).isEqualTo(film(mine));
        }
    }

    @Test
    void a_program_that_died_after_the_store_had_the_change_has_it_at_the_next_opening() throws IOException {
        try (Archive mine = Archive.open(home.resolve("mine"), store.place())) {
            mine.put(stopped("r1"), false);
        }
        copy(home.resolve("mine"), home.resolve("died"));
        try (Archive mine = Archive.open(home.resolve("mine"), store.place())) {
            mine.put(stopped("r2"), true);
        }

        try (Archive died = Archive.open(home.resolve("died"), PlayedStore.asBefore())) {
            assertThat(died.following().notes()).contains("Fetched what was changed there.");
            assertThat(reps(died)).containsExactly("r1", "r2");
            assertThat(died.assess("jory-penwick").orElseThrow().reps()).isEqualTo(2);
            assertThat(store.film()).isEqualTo(film(died));
        }
    }

    @Test
    void filling_a_store_that_was_cut_off_is_begun_again_by_the_folder_that_began_it() {
        try (Archive alone = Archive.open(home.resolve("mine"))) {
            alone.put(stopped("r1"), false);
        }
        // The first change marks the store as being filled, the second says that it is full.
        store.afterNextChange(() -> {
            store.beforeNextChange(() -> 500);
            return 0;
        });
        assertThatThrownBy(() -> Archive.open(home.resolve("mine"), store.place()))
                .hasMessageContaining("is in trouble of its own");
        assertThatThrownBy(() -> Archive.open(home.resolve("his"), store.place()))
                .hasMessageContaining("is being filled by another folder");

        try (Archive mine = Archive.open(home.resolve("mine"), PlayedStore.asBefore())) {
            assertThat(store.film()).isEqualTo(film(mine)).isNotEmpty();
        }
    }

    @Test
    void a_store_whose_default_graph_shows_all_graphs_is_refused() {
        DatasetGraph mixed = DatabaseMgr.createDatasetGraph();
        mixed.getContext().set(TDB2.symUnionDefaultGraph, true);
        try (PlayedStore union = PlayedStore.of(mixed)) {
            assertThatThrownBy(() -> Archive.open(home.resolve("mine"), union.place()))
                    .hasMessageContaining("shows all its graphs in the default graph")
                    .hasMessageContaining("tdb2:unionDefaultGraph false");

            assertThat(union.film()).isEmpty();
        }
    }

    @Test
    void a_page_of_the_web_is_no_store() throws IOException {
        HttpServer web = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        web.createContext("/", exchange -> {
            byte[] page = "<html><title>Welcome</title></html>".getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().add("Content-Type", "text/html");
            exchange.sendResponseHeaders(200, page.length);
            exchange.getResponseBody().write(page);
            exchange.close();
        });
        web.start();
        try {
            assertThatThrownBy(() -> Archive.open(
                            home.resolve("mine"),
                            PlayedStore.at(
                                    "http://localhost:" + web.getAddress().getPort() + "/film")))
                    .hasMessageContaining("not as a SPARQL 1.1 store does");
        } finally {
            web.stop(0);
        }
        try (Archive alone = Archive.open(home.resolve("mine"))) {
            assertThat(alone.following().isElsewhere()).isFalse();
        }
    }

    @Test
    void a_password_opens_the_store_and_is_told_to_nobody() throws IOException {
        Path passwords = Files.writeString(home.resolve("passwords"), "first-eyes: quiet-drizzle-41\n");
        try (PlayedStore guarded = PlayedStore.guarded(passwords)) {
            assertThatThrownBy(() -> Archive.open(home.resolve("mine"), guarded.place("first-eyes:loud-drizzle-99")))
                    .hasMessageContaining("lets nobody in")
                    .satisfies(e -> assertThat(e.toString()).doesNotContain("loud-drizzle"));
            assertThatThrownBy(() -> Archive.open(home.resolve("mine"), guarded.place()))
                    .hasMessageContaining("lets nobody in");
            KeptAt place = guarded.place("first-eyes:quiet-drizzle-41");
            assertThat(place.toString()).doesNotContain("quiet-drizzle");

            try (Archive mine = Archive.open(home.resolve("mine"), place)) {
                mine.put(stopped("r1"), false);
                assertThat(guarded.film()).isEqualTo(film(mine)).isNotEmpty();
            }
        }
        try (Stream<Path> files = Files.walk(home.resolve("mine"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                        .doesNotContain("quiet-drizzle");
            }
        }
    }
}
