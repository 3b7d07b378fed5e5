package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rushlight.archive.PlayedFilm.film;
import static rushlight.archive.PlayedFilm.reps;
import static rushlight.archive.PlayedFilm.stopped;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.store.RemoteStoreException;

/** A store that was emptied, that may not be changed, or whose line breaks takes no folder with it and gets nobody's old film. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class StoreEmptiedTest {
    @TempDir
    private Path home;

    @AutoClose
    private final PlayedStore store = PlayedStore.start();

    @Test
    void whoever_only_looks_does_not_fill_a_store_that_was_emptied() {
        try (Archive mine = open("mine")) {
            mine.put(stopped("r1"), false);
            store.loseEverything();

            assertThatThrownBy(() -> mine.following().catchUp())
                    .hasMessageContaining("holds nothing any more")
                    .hasMessageContaining("open it with --store");
            assertThatThrownBy(() -> mine.put(stopped("r2"), true)).hasMessageContaining("holds nothing any more");

            assertThat(store.film()).isEmpty();
            assertThat(reps(mine)).containsExactly("r1");
        }
        try (Archive mine = Archive.open(home.resolve("mine"), PlayedStore.asBefore())) {
            assertThat(mine.following().notes()).last().asString().contains("the film is read here as it was");
            assertThat(mine.assess("jory-penwick").orElseThrow().reps()).isEqualTo(1);
            assertThat(store.film()).isEmpty();
        }
    }

    @Test
    void a_backup_takes_the_place_of_what_was_lost_and_not_the_film_of_whoever_looks_first() throws IOException {
        Path file = home.resolve("film.zip");
        try (Archive mine = open("mine")) {
            mine.put(stopped("r1", "r2"), false);
            try (var out = Files.newOutputStream(file)) {
                mine.backup(out);
            }
            mine.put(stopped("r9"), false);
            store.loseEverything();
            assertThatThrownBy(() -> mine.following().catchUp()).isInstanceOf(RemoteStoreException.class);
        }
        Restoring.restore(file, home.resolve("restored"), false);

        try (Archive restored = open("restored")) {
            assertThat(reps(restored)).containsExactly("r1", "r2");
            assertThat(store.film()).isEqualTo(film(restored));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {403, 405})
    void a_store_that_may_only_be_read_does_not_keep_hold_of_the_folder(int status) {
        try (Archive alone = Archive.open(home.resolve("mine"))) {
            alone.put(stopped("r1"), false);
        }
        store.refuseChanges(status);

        assertThatThrownBy(() -> open("mine")).isInstanceOf(RemoteStoreException.class);

        try (Archive alone = Archive.open(home.resolve("mine"))) {
            assertThat(alone.following().isElsewhere()).isFalse();
            alone.put(stopped("r2"), true);
            assertThat(reps(alone)).containsExactly("r1", "r2");
        }
    }

    @Test
    void where_the_line_breaks_while_film_is_fetched_it_is_read_as_it_was() throws IOException {
        try (CutLine line = new CutLine(store.port())) {
            try (Archive his = Archive.open(home.resolve("his"), PlayedStore.at(line.address()));
                    Archive mine = open("mine")) {
                mine.put(stopped(IntStream.range(0, 100).mapToObj(i -> "r" + i).toArray(String[]::new)), false);
                line.cutNextFetch();

                assertThatThrownBy(() -> his.following().catchUp())
                        .hasMessageContaining("broke off while it was spoken to")
                        .satisfies(e ->
                                assertThat(((RemoteStoreException) e).isAway()).isTrue());
            }
            line.cutNextFetch();
            try (Archive his = Archive.open(home.resolve("his"), PlayedStore.asBefore())) {
                assertThat(his.following().notes()).last().asString().contains("You read the film as it was");
                his.following().catchUp();
                assertThat(reps(his)).hasSize(100);
            }
        }
    }

    private Archive open(String folder) {
        return Archive.open(home.resolve(folder), store.place());
    }
}
