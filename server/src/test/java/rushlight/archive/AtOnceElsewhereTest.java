package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rushlight.archive.PlayedFilm.film;
import static rushlight.archive.PlayedFilm.reps;
import static rushlight.archive.PlayedFilm.stopped;

import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.store.Aligned;
import rushlight.store.RemoteStoreException;
import rushlight.store.RemoteStoreException.Kind;

/** Two folders change the film of one store at once, at the worst moments: nobody's work is lost, halved or made twice. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AtOnceElsewhereTest {
    @TempDir
    private Path home;

    @AutoClose
    private final PlayedStore store = PlayedStore.start();

    @Test
    void of_a_large_change_that_was_laid_down_not_a_half_is_made() {
        String[] many = IntStream.range(0, 200).mapToObj(i -> "r" + i).toArray(String[]::new);
        try (Archive mine = open("mine")) {
            mine.put(stopped("r0"), false);
            store.beforeNextChange(() -> {
                store.loseOneThatWasLaidDown();
                return 0;
            });

            mine.put(stopped(many), false);

            assertThat(reps(mine)).containsExactly(many);
            assertThat(store.film()).isEqualTo(film(mine));
        }
    }

    @Test
    void whoever_lost_the_answer_and_was_overtaken_is_told_that_his_change_is_stored() {
        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(stopped("r1"), false);
            store.afterNextChange(() -> {
                his.following().catchUp();
                his.put(stopped("r2"), true);
                return 502;
            });

            assertThatThrownBy(() -> SavedQuestions.of(mine).save("Power", "bull rush", ""))
                    .hasMessageContaining("Your change is stored")
                    .hasMessageContaining("do not make the change again")
                    .extracting(e -> ((RemoteStoreException) e).kind())
                    .isEqualTo(Kind.OVERTAKEN);

            assertThat(SavedQuestions.of(mine).all()).hasSize(1);
            assertThat(reps(mine)).containsExactly("r1", "r2");
            assertThat(store.film()).isEqualTo(film(mine)).isEqualTo(film(his));
        }
    }

    @Test
    void an_import_that_was_overtaken_is_not_made_a_second_time_over_what_came_after_it() {
        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(stopped("r1"), false);
            store.afterNextChange(() -> {
                his.following().catchUp();
                his.put(stopped("r1", "r2", "r3"), false);
                return 502;
            });

            assertThatThrownBy(() -> mine.put(stopped("r1", "r2"), false))
                    .hasMessageContaining("Your change is stored");

            assertThat(reps(mine)).containsExactly("r1", "r2", "r3");
            assertThat(store.film()).isEqualTo(film(mine));
        }
    }

    @Test
    void what_was_fetched_is_not_written_over_what_was_agreed_here_meanwhile() {
        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(stopped("r1"), false);
            his.following().catchUp();
            his.erasing().erase("jory-penwick");

            Aligned late = mine.store().elsewhere().align(false, () -> {
                mine.following().catchUp();
                SavedQuestions.of(mine).save("Power", "bull rush", "");
            });

            assertThat(late.how()).isEqualTo(Aligned.How.NOTHING);
            assertThat(SavedQuestions.of(mine).all()).hasSize(1);
            assertThat(store.film()).isEqualTo(film(mine));
        }
    }

    private Archive open(String folder) {
        return Archive.open(home.resolve(folder), store.place());
    }
}
