package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rushlight.archive.PlayedFilm.bytes;
import static rushlight.archive.PlayedFilm.film;
import static rushlight.archive.PlayedFilm.json;
import static rushlight.archive.PlayedFilm.logs;
import static rushlight.archive.PlayedFilm.reps;
import static rushlight.archive.PlayedFilm.stopped;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.vocabulary.RDFS;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.store.RemoteStoreException;

/** A department keeps its film in one store, and every evaluator works on a copy of it in his own folder. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class KeptElsewhereTest {
    @TempDir
    private Path home;

    @AutoClose
    private final PlayedStore store = PlayedStore.start();

    @Test
    void what_one_imports_the_other_sees_when_he_opens_his_folder() {
        try (Archive mine = open("mine")) {
            mine.put(stopped("r1", "r2"), false);
        }

        try (Archive his = open("his")) {
            assertThat(reps(his)).containsExactly("r1", "r2");
            assertThat(his.assess("jory-penwick").orElseThrow().reps()).isEqualTo(2);
        }
    }

    @Test
    void while_both_work_each_finds_what_the_other_changed_by_looking() {
        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(stopped("r1", "r2"), false);
            assertThat(reps(his)).isEmpty();

            his.following().catchUp();

            assertThat(his.assess("jory-penwick").orElseThrow().reps()).isEqualTo(2);
            his.put(stopped("r2", "r3", "r4"), false);
            mine.following().catchUp();
            assertThat(reps(mine)).containsExactly("r2", "r3", "r4");
            assertThat(mine.assess("jory-penwick").orElseThrow().reps()).isEqualTo(3);
        }
    }

    @Test
    void a_folder_with_film_fills_an_empty_store_and_remembers_it() {
        try (Archive alone = Archive.open(home.resolve("mine"))) {
            alone.put(stopped("r1"), false);
        }

        try (Archive mine = open("mine")) {
            assertThat(mine.following().notes())
                    .containsExactly("The store there was empty and has the film of this folder now.");
        }

        try (Archive again = Archive.open(home.resolve("mine"), PlayedStore.asBefore())) {
            assertThat(again.following().notes())
                    .containsExactly("The film of this folder is kept at " + store.address() + ".");
            again.put(stopped("r1", "r2"), false);
            assertThat(store.film()).isEqualTo(film(again));
        }
    }

    @Test
    void store_and_copy_hold_the_same_after_every_kind_of_change() {
        try (Archive mine = open("mine")) {
            mine.put(stopped("r1", "r2"), false);
            mine.put(stopped("r2", "r3"), true);
            mine.edits().remove(mine.store().logs().get(0), "r1", Optional.empty());
            mine.edits().undo(Optional.empty());
            SavedQuestions.of(mine).save("Power", "bull rush", "");
            mine.rebuild();

            assertThat(store.film()).isEqualTo(film(mine)).hasSizeGreaterThan(50);
        }
    }

    @Test
    void the_league_reads_byte_for_byte_the_same_from_a_folder_and_from_the_copy_of_a_store() {
        String alone;
        try (Archive archive = Archive.open(home.resolve("alone"))) {
            DemoLeague.into(archive);
            alone = json(archive);
        }

        try (Archive mine = open("mine")) {
            DemoLeague.into(mine);
            assertThat(json(mine)).isEqualTo(alone);
        }
        try (Archive his = open("his")) {
            assertThat(json(his)).isEqualTo(alone);
            assertThat(store.film()).isEqualTo(film(his));
        }
    }

    @Test
    void whose_reading_of_a_rep_counts_is_the_same_in_every_folder_though_he_comes_last_by_name() {
        try (Archive mine = open("mine")) {
            mine.put(logs("r1,Jory Penwick,Opener,Port Ellery,pass-rush,bull-rush,yes,lost,,Zinnia Eyes\n"), false);
            mine.put(logs("r1,Jory Penwick,Opener,Port Ellery,pass-rush,spin,yes,won,,Amber Eyes\n"), false);
            try (Archive his = open("his")) {
                assertThat(json(his)).isEqualTo(json(mine));
                assertThat(his.seen(Optional.empty(), Optional.empty(), "bull-rush")
                                .opportunities())
                        .isEqualTo(1);
            }
        }
    }

    @Test
    void of_two_who_write_at_the_same_time_neither_loses_anything() {
        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(stopped("r0"), false);
            List<CompletableFuture<Void>> both = new ArrayList<>();
            for (Archive one : List.of(mine, his)) {
                String name = one == mine ? "m" : "h";
                both.add(CompletableFuture.runAsync(() -> {
                    for (int i = 0; i < 4; i++) {
                        addUntilTaken(one, name + i);
                    }
                }));
            }
            both.forEach(CompletableFuture::join);

            for (Archive one : List.of(mine, his)) {
                one.following().catchUp();
                assertThat(reps(one)).containsExactlyInAnyOrder("r0", "m0", "m1", "m2", "m3", "h0", "h1", "h2", "h3");
                assertThat(film(one)).isEqualTo(store.film());
                assertThat(one.assess("jory-penwick").orElseThrow().reps()).isEqualTo(9);
            }
        }
    }

    private static void addUntilTaken(Archive archive, String rep) {
        boolean isTaken = false;
        while (!isTaken) {
            try {
                archive.put(stopped(rep), true);
                isTaken = true;
            } catch (RemoteStoreException e) {
                assertThat(e.kind()).isEqualTo(RemoteStoreException.Kind.STALE);
            }
        }
    }

    @Test
    void an_import_over_film_that_somebody_else_changed_meanwhile_is_made_on_top_of_his() {
        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(stopped("r1"), false);

            his.put(stopped("r2"), true);

            assertThat(reps(his)).containsExactly("r1", "r2");
            assertThat(store.film()).isEqualTo(film(his));
        }
    }

    @Test
    void an_edit_of_film_that_somebody_else_changed_meanwhile_is_refused_and_his_change_is_shown() {
        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(stopped("r1", "r2"), false);
            his.following().catchUp();
            mine.put(stopped("r3"), true);
            Set<String> before = store.film();

            assertThatThrownBy(() -> his.edits().remove(his.store().logs().get(0), "r1", Optional.empty()))
                    .hasMessageContaining("Somebody else has changed the film in the store at " + store.address())
                    .hasMessageContaining("do it again");

            assertThat(store.film()).isEqualTo(before).isEqualTo(film(his));
            his.edits().remove(his.store().logs().get(0), "r1", Optional.empty());
            assertThat(reps(his)).containsExactly("r2", "r3");
            assertThat(store.film()).isEqualTo(film(his));
        }
    }

    @Test
    void who_is_erased_in_one_folder_is_gone_from_the_store_and_from_the_other_folder() throws IOException {
        try (Archive mine = open("mine")) {
            mine.put(stopped("r1"), false);
            mine.put(logs("r1,Oren Halloway,Opener,Port Ellery,pass-rush,spin,yes,won,,First Eyes\n"), false);
        }
        try (Archive his = open("his");
                Archive mine = open("mine")) {
            assertThat(his.assess("jory-penwick")).isPresent();

            mine.erasing().erase("jory-penwick");

            assertThat(store.film()).noneMatch(line -> line.contains("jory-penwick"));
            his.following().catchUp();
            assertThat(his.assess("jory-penwick")).isEmpty();
            assertThat(his.assess("oren-halloway")).isPresent();
        }
        assertThat(bytes(home.resolve("his"))).doesNotContain("Penwick").contains("Halloway");
    }

    @Test
    void words_that_look_like_commands_stay_words() {
        String name = "O'Dare \\\" } } ; DROP ALL ; INSERT DATA { <a:b> <c:d> \\\\ \u00e9\u6f22\ud83c\udfc8";
        String row = "r1,\"" + name.replace("\"", "\"\"") + "\",\"Op<ener> {x}\",\"Port #Ellery\",pass-rush,bull-rush,"
                + "yes,lost,,\"First 'Eyes'\"\n";

        try (Archive mine = open("mine");
                Archive his = open("his")) {
            mine.put(logs(row), false);
            SavedQuestions.of(mine).save("q'; CLEAR ALL #", "line one\nline two\t\"\"\"\u0001 \\u0041", "");
            his.following().catchUp();

            assertThat(his.prospects()).isEqualTo(mine.prospects());
            assertThat(his.prospects().get(0).name()).isEqualTo(name);
            assertThat(SavedQuestions.of(his).all())
                    .isEqualTo(SavedQuestions.of(mine).all());
            assertThat(store.film()).isEqualTo(film(his)).isEqualTo(film(mine));
        }
    }

    @Test
    void two_folders_with_different_film_are_not_put_into_one_another() {
        try (Archive mine = open("mine")) {
            mine.put(stopped("r1"), false);
        }
        try (Archive alone = Archive.open(home.resolve("his"))) {
            alone.put(stopped("r8", "r9"), false);
        }

        assertThatThrownBy(() -> open("his")).hasMessageContaining("hold different film");

        try (Archive his = Archive.open(home.resolve("his"))) {
            assertThat(his.following().isElsewhere()).isFalse();
            assertThat(reps(his)).containsExactly("r8", "r9");
        }
    }

    @Test
    void a_folder_is_taken_away_from_its_store_on_purpose_alone() {
        try (Archive mine = open("mine")) {
            mine.put(stopped("r1"), false);
        }

        try (Archive alone = Archive.open(home.resolve("mine"), PlayedStore.at(KeptAt.HERE))) {
            alone.put(stopped("r2"), true);
            assertThat(reps(alone)).containsExactly("r1", "r2");
        }

        assertThat(store.film()).noneMatch(line -> line.contains("/r2/"));
        assertThatThrownBy(() -> open("mine")).hasMessageContaining("hold different film");
    }

    @Test
    void a_store_that_lost_everything_is_filled_again_from_a_folder() {
        try (Archive mine = open("mine")) {
            mine.put(stopped("r1"), false);
        }
        store.loseEverything();

        // On purpose: whoever names the store wants his film there.
        try (Archive mine = open("mine")) {
            assertThat(store.film()).isEqualTo(film(mine)).isNotEmpty();
        }
    }

    @Test
    void a_store_that_holds_something_else_is_left_alone() {
        Quad other = Quad.create(
                Quad.defaultGraphIRI,
                NodeFactory.createURI("https://other.example/thing"),
                RDFS.label.asNode(),
                NodeFactory.createLiteralString("not film"));
        store.say(other);

        assertThatThrownBy(() -> open("mine")).hasMessageContaining("holds something that Rushlight did not put there");
        assertThat(store.film()).hasSize(1);
    }

    @Test
    void a_backup_of_a_copy_is_restored_into_a_folder_of_its_own() throws IOException {
        Path file = home.resolve("film.zip");
        try (Archive mine = open("mine");
                var out = Files.newOutputStream(file)) {
            mine.put(stopped("r1"), false);
            mine.backup(out);
            mine.put(stopped("r2"), true);
        }

        Restoring.restore(file, home.resolve("restored"), false);

        try (Archive restored = Archive.open(home.resolve("restored"))) {
            assertThat(restored.following().isElsewhere()).isFalse();
            assertThat(reps(restored)).containsExactly("r1");
        }
    }

    private Archive open(String folder) {
        return Archive.open(home.resolve(folder), store.place());
    }
}
