package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static rushlight.archive.PlayedFilm.bytes;
import static rushlight.archive.PlayedFilm.copy;
import static rushlight.archive.PlayedFilm.film;
import static rushlight.archive.PlayedFilm.logs;
import static rushlight.archive.PlayedFilm.stopped;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.film.Prospect;

/** Whoever is erased in one folder is gone from the files of every other one, whatever was cut off on the way. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ErasedElsewhereTest {
    private static final String OREN = "r1,Oren Halloway,Opener,Port Ellery,pass-rush,spin,yes,won,,First Eyes\n";

    @TempDir
    private Path home;

    @AutoClose
    private final PlayedStore store = PlayedStore.start();

    @BeforeEach
    void film_of_two_and_the_name_of_a_third() {
        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(stopped("r1"), false);
            mine.put(logs(OREN), List.of(Prospect.named("tam-underhill", "Tam Underhill")), false);
            his.following().catchUp();
        }
    }

    @Test
    void who_has_a_name_in_the_list_and_no_film_is_gone_as_well() throws IOException {
        try (Archive mine = open("mine")) {
            mine.erasing().erase("tam-underhill");
        }
        assertThat(bytes(home.resolve("his"))).contains("Underhill");

        open("his").close();

        assertThat(bytes(home.resolve("his"))).doesNotContain("Underhill").contains("Penwick");
    }

    @Test
    void a_fetch_that_was_cut_off_before_the_files_were_written_anew_is_finished_at_the_next_opening()
            throws IOException {
        try (Archive his = open("his")) {
            try (Archive mine = open("mine")) {
                mine.erasing().erase("jory-penwick");
            }
            his.store().elsewhere().align(false, his.following()::beforeReplacing);
            copy(home.resolve("his"), home.resolve("died"));
        }
        assertThat(bytes(home.resolve("died"))).contains("Penwick");

        try (Archive died = Archive.open(home.resolve("died"), PlayedStore.asBefore())) {
            assertThat(died.assess("jory-penwick")).isEmpty();
            assertThat(died.assess("oren-halloway")).isPresent();
            assertThat(store.film()).isEqualTo(film(died));
        }
        assertThat(bytes(home.resolve("died"))).doesNotContain("Penwick").contains("Halloway");
        assertThat(home.resolve("died").resolve("erasing")).doesNotExist();
    }

    @Test
    void a_change_after_a_fetch_that_was_cut_off_is_not_taken_for_all_there_is() {
        try (Archive his = open("his")) {
            his.following().beforeReplacing();

            his.put(stopped("r2"), true);

            assertThat(his.assess("jory-penwick").orElseThrow().reps()).isEqualTo(2);
            assertThat(his.assess("oren-halloway")).isPresent();
            assertThat(his.lag()).isZero();
        }
        try (Archive his = open("his")) {
            assertThat(his.assess("oren-halloway")).isPresent();
        }
    }

    private Archive open(String folder) {
        return Archive.open(home.resolve(folder), store.place());
    }
}
