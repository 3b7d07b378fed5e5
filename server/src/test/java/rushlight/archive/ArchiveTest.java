package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rushlight.archive.PlayedFilm.json;
import static rushlight.archive.PlayedFilm.logs;
import static rushlight.archive.PlayedFilm.reps;
import static rushlight.archive.PlayedFilm.stopped;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.apache.commons.io.FileUtils;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.sparql.graph.GraphFactory;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.FilmLogWriter;
import rushlight.film.csv.ReadResult;
import rushlight.store.Classified;
import rushlight.store.Store;
import rushlight.web.AssessAnswer;
import rushlight.web.Json;

/** A department keeps its film in a folder: what is in it, is in it whole, and everything that counts agrees with it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ArchiveTest {
    private static final Book BOOK = Book.packaged();

    @TempDir
    private Path folder;

    @Test
    void what_was_imported_is_there_the_next_time() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(stopped("r1", "r2"), false);
        }

        try (Archive archive = Archive.open(folder)) {
            assertThat(reps(archive)).containsExactly("r1", "r2");
            assertThat(archive.assess("jory-penwick").orElseThrow().reps()).isEqualTo(2);
        }
    }

    @Test
    void the_same_log_again_takes_the_place_of_the_first_and_says_so() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(stopped("r1", "r2"), false);

            PutResult again = archive.put(stopped("r2", "r3", "r4"), false);

            assertThat(((PutResult.Stored) again).logs())
                    .extracting(PutResult.Replaced::before, PutResult.Replaced::after)
                    .containsExactly(org.assertj.core.groups.Tuple.tuple(2, 3));
            assertThat(reps(archive)).containsExactly("r2", "r3", "r4");
            assertThat(archive.assess("jory-penwick").orElseThrow().reps()).isEqualTo(3);
        }
    }

    @Test
    void adding_keeps_what_the_new_file_does_not_name() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(stopped("r1", "r2"), false);

            archive.put(stopped("r3"), true);

            assertThat(reps(archive)).containsExactly("r1", "r2", "r3");
        }
    }

    @Test
    void a_game_that_means_another_opponent_is_refused_and_nothing_changes() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(stopped("r1"), false);

            PutResult refused =
                    archive.put(logs("r9,Jory Penwick,Opener,Stonefen,pass-rush,bull-rush,,lost,,First Eyes\n"), false);

            assertThat(((PutResult.Refused) refused).reasons())
                    .singleElement()
                    .asString()
                    .contains("The folder has the game \"Opener\" against \"Port Ellery\"")
                    .contains("Give one of them another name or date.");
            assertThat(reps(archive)).containsExactly("r1");
        }
    }

    @Test
    void an_index_behind_the_store_catches_up_when_the_folder_is_opened() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(stopped("r1"), false);
        }
        // The program dies after the store's commit and before the index's: only the store knows the change.
        Log changed = stopped("r1", "r2", "r3").get(0);
        try (Store store = Store.in(folder.resolve("store"), BOOK.taxonomy().film())) {
            store.replace(
                    List.of(new Classified(
                            changed,
                            BOOK.classified(changed).facts().stream()
                                    .map(f -> f.tagged("repClass"))
                                    .toList())),
                    BOOK.ontology().fingerprint(),
                    Instant.EPOCH);
        }

        try (Archive archive = Archive.open(folder)) {
            assertThat(archive.assess("jory-penwick").orElseThrow().reps()).isEqualTo(3);
        }
    }

    @Test
    void a_folder_without_its_index_makes_it_again() throws IOException {
        String before;
        try (Archive archive = Archive.open(folder)) {
            archive.put(stopped("r1", "r2"), false);
            before = json(archive);
        }
        FileUtils.deleteDirectory(folder.resolve("index").toFile());

        try (Archive archive = Archive.open(folder)) {
            assertThat(json(archive)).isEqualTo(before);
        }
    }

    @Test
    void a_line_of_your_own_is_used_from_the_next_opening_on_and_both_are_shown() throws IOException {
        try (Archive archive = Archive.open(folder)) {
            archive.put(stopped("r1", "r2"), false);
        }
        Files.writeString(folder.resolve("overlay.ttl"), """
                @prefix kb: <https://rushlight.example/id/> .
                @prefix rl: <https://rushlight.example/def#> .
                kb:primary-without-counter rl:line 0.55 .
                """);

        try (Archive archive = Archive.open(folder)) {
            var standard = archive.assess("jory-penwick")
                    .orElseThrow()
                    .finding("primary-without-counter")
                    .orElseThrow()
                    .finding()
                    .standard();
            assertThat(standard.line()).hasValue(0.55);
            assertThat(standard.houseLine()).hasValue(0.7);
        }
    }

    @Test
    void where_two_evaluators_read_a_rep_the_one_who_came_first_counts() {
        try (Archive archive = Archive.open(folder)) {
            archive.put(
                    logs(
                            "r1,Jory Penwick,Opener,Port Ellery,pass-rush,bull-rush > [anchor-hop],yes,lost,,First Eyes\n"),
                    false);
            archive.put(logs("r1,Jory Penwick,Opener,Port Ellery,pass-rush,spin,yes,won,,Second Eyes\n"), false);

            assertThat(archive.assess("jory-penwick").orElseThrow().reps()).isEqualTo(1);
            assertThat(archive.logs()).hasSize(2);
            assertThat(archive.seen(Optional.empty(), Optional.empty(), "spin").opportunities())
                    .isZero();
            assertThat(archive.seen(Optional.empty(), Optional.empty(), "bull-rush")
                            .opportunities())
                    .isEqualTo(1);
        }
    }

    @Test
    void the_whole_league_reads_the_same_from_the_index_as_from_memory_and_after_an_export() throws IOException {
        String fromIndex;
        StringWriter csv = new StringWriter();
        List<Log> logs;
        try (Archive archive = Archive.open(folder.resolve("one"))) {
            DemoLeague.into(archive);
            fromIndex = json(archive);
            logs = archive.logs();
            FilmLogWriter.of(BOOK.taxonomy().film()).write(logs, csv);
            ByteArrayOutputStream turtle = new ByteArrayOutputStream();
            archive.store().writeTurtle(turtle);
            var graph = GraphFactory.createDefaultGraph();
            RDFParser.source(new ByteArrayInputStream(turtle.toByteArray()))
                    .lang(Lang.TURTLE)
                    .parse(graph);
            assertThat(graph.size()).isGreaterThan(50_000);
        }
        ReadResult back = FilmLogReader.of(BOOK.taxonomy())
                .read(
                        "league.csv",
                        new ByteArrayInputStream(csv.toString().getBytes(StandardCharsets.UTF_8)),
                        new FilmLogReader.Options(
                                Optional.empty(),
                                Optional.empty(),
                                logs.stream().map(Log::prospect).distinct().toList()));

        List<Log> again = ((ReadResult.Accepted) back).logs();
        assertThat(again.stream().mapToInt(l -> l.readings().size()).sum())
                .isEqualTo(logs.stream().mapToInt(l -> l.readings().size()).sum());
        assertThat(Json.text(BOOK.assess(again).stream().map(AssessAnswer::of).toList()))
                .isEqualTo(fromIndex);
    }

    @Test
    void a_folder_in_use_says_by_whom() {
        try (Archive first = Archive.open(folder)) {
            assertThat(first.logs()).isEmpty();
            assertThatThrownBy(() -> Archive.open(folder))
                    .isInstanceOf(FolderException.class)
                    .hasMessageContaining("is in use by");
        }
    }
}
