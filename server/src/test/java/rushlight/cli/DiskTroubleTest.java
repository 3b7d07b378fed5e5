package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The disk is full, or the folder may not be written to: a sentence says so, and what was there is there. The device that
 * is always full stands in for a disk; a folder where a file should be, and a file where a folder should be, stand in
 * for a missing permission, which would not stop an administrator.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
@EnabledOnOs(OS.LINUX)
class DiskTroubleTest {
    private static final Path FULL = Path.of("/dev/full");
    private static final String HEADER = "rep,prospect,game,phase,exchange,result,evaluator\n";

    @TempDir
    private Path home;

    private Path data;
    private Path more;
    private Path notes;

    @BeforeEach
    void film_is_there() throws IOException {
        data = home.resolve("data");
        Path log = Files.writeString(
                home.resolve("log.csv"), HEADER + "r1,Jory Penwick,Opener,pass-rush,bull-rush,lost,First Eyes\n");
        more = Files.writeString(
                home.resolve("more.csv"), HEADER + "r1,Jory Penwick,Second,pass-rush,rip,won,Other Eyes\n");
        notes = Files.writeString(home.resolve("notes.txt"), "[0:04] Overall, he could use a counter inside.\n");
        assertThat(Said.to("import", log.toString(), "--data", data.toString()).code())
                .isZero();
    }

    @Test
    void an_import_for_which_there_is_no_room_is_told_and_nothing_of_it_is_there() throws IOException {
        String before = film();
        Files.createSymbolicLink(data.resolve("settings.json.next"), FULL);

        complains(Said.to("import", more.toString(), "--data", data.toString()), "The disk is full", "Make room");

        Files.delete(data.resolve("settings.json.next"));
        assertThat(film()).isEqualTo(before);
        assertThat(Said.to("import", more.toString(), "--data", data.toString()).code())
                .isZero();
    }

    @Test
    void a_backup_and_an_export_for_which_there_is_no_room_leave_the_older_file_as_it_was() throws IOException {
        for (List<String> words : List.of(List.of("backup", "friday.zip"), List.of("export", "friday.csv"))) {
            Path file = Files.writeString(home.resolve(words.get(1)), "last week's");
            Files.createSymbolicLink(home.resolve(words.get(1) + ".part"), FULL);

            complains(
                    Said.to(words.get(0), file.toString(), "--data", data.toString()), "The disk is full", "Make room");

            assertThat(file).hasContent("last week's");
            Files.deleteIfExists(home.resolve(words.get(1) + ".part"));
        }
    }

    @Test
    void a_data_folder_that_may_not_be_written_to_is_told_by_every_command_that_would() throws IOException {
        String before = film();
        Files.delete(data.resolve("lock"));
        Files.createDirectory(data.resolve("lock"));

        for (List<String> words : List.of(
                List.of("import", more.toString()),
                List.of("notes", notes.toString(), "--prospect", "Jory Penwick", "--evaluator", "Kim Orr", "--save"),
                List.of("export", home.resolve("film.csv").toString()),
                List.of("backup", home.resolve("film.zip").toString()),
                List.of("reindex"))) {
            Said said = Said.to(Stream.concat(words.stream(), Stream.of("--data", data.toString()))
                    .toArray(String[]::new));

            complains(said, "The data folder " + data + " cannot be written to", "Nothing was changed.");
        }
        assertThat(home.resolve("film.csv")).doesNotExist();
        assertThat(home.resolve("film.zip")).doesNotExist();
        Files.delete(data.resolve("lock"));
        assertThat(film()).isEqualTo(before);
    }

    @Test
    void a_place_that_may_not_be_written_to_is_told_by_every_command_that_writes_a_file() throws IOException {
        Path closed = Files.writeString(home.resolve("closed"), "a file where a folder should be");

        for (List<String> words : List.of(
                List.of("export", closed.resolve("film.csv").toString()),
                List.of("backup", closed.resolve("film.zip").toString()),
                List.of("publish", closed.resolve("book").toString()))) {
            Said said = Said.to(Stream.concat(words.stream(), Stream.of("--data", data.toString()))
                    .toArray(String[]::new));

            complains(said, closed.toString());
        }
        assertThat(closed).hasContent("a file where a folder should be");
    }

    private static void complains(Said said, String... words) {
        assertThat(said.code()).as(said.out()).isBetween(1, 3);
        assertThat(said.isPolite().err()).contains(words);
    }

    private String film() throws IOException {
        Path out = home.resolve("out.csv");
        assertThat(Said.to("export", out.toString(), "--data", data.toString()).code())
                .isZero();
        return Files.readString(out);
    }
}
