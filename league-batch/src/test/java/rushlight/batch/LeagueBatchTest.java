package rushlight.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Book;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.web.AssessAnswer;
import rushlight.web.Beside;
import rushlight.web.Json;

@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LeagueBatchTest {
    private static final List<String> LEAGUE =
            List.of("anselm-corrigate", "bram-aldersey", "calix-draymoor", "keverne-toll", "tavish-mordell");

    private JavaSparkContext spark = new JavaSparkContext(new SparkConf()
            .setAppName("a league on two threads")
            .setMaster("local[2]")
            .set("spark.ui.enabled", "false")
            .set("spark.driver.bindAddress", "127.0.0.1")
            .set("spark.driver.host", "127.0.0.1"));

    private Path logs = Path.of("");

    @BeforeAll
    void the_league_lies_in_a_folder(@TempDir Path folder) throws IOException {
        logs = Files.createDirectory(folder.resolve("logs"));
        for (String name : LEAGUE) {
            try (InputStream in = Objects.requireNonNull(
                    LeagueBatchTest.class.getResourceAsStream("/rushlight/demo/logs/" + name + ".csv"), name)) {
                Files.copy(in, logs.resolve(name + ".csv"));
            }
        }
        dealOut("tavish-mordell");
    }

    @AfterAll
    void the_engine_stops() {
        spark.close();
    }

    /** His film as two evaluators' files would bring it: every second row in a file of its own, under another name. */
    private void dealOut(String name) throws IOException {
        List<String> rows = Files.readAllLines(logs.resolve(name + ".csv"));
        List<String> even = new ArrayList<>(List.of(rows.get(0)));
        List<String> odd = new ArrayList<>(List.of(rows.get(0)));
        for (int i = 1; i < rows.size(); i++) {
            (i % 2 == 0 ? even : odd).add(rows.get(i));
        }
        Files.write(logs.resolve(name + ".csv"), even);
        Files.write(logs.resolve("a-" + name + ".csv"), odd);
    }

    @Test
    void says_of_everybody_what_one_machine_says_byte_for_byte(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("league.json");

        assertThat(new LeagueBatch(spark, 3).assess(logs.toString(), out)).isEmpty();

        assertThat(Files.readString(out)).isEqualTo(onOneMachine());
        assertThat(onOneMachine()).contains("no-inside-counter").contains("keverne-toll");
    }

    @Test
    void a_file_with_a_fault_is_named_and_nothing_is_written(@TempDir Path folder) throws IOException {
        Path bad = Files.createDirectory(folder.resolve("logs"));
        Files.copy(logs.resolve("keverne-toll.csv"), bad.resolve("keverne-toll.csv"));
        Files.writeString(bad.resolve("friday.csv"), "rep,prospect,game,phase\nr1,Jory Penwick,Opener,pas-rush\n");
        Path out = folder.resolve("league.json");

        assertThat(new LeagueBatch(spark, 2).assess(bad.toString(), out))
                .singleElement()
                .asString()
                .startsWith("friday.csv: Line 2, phase: there is no \"pas-rush\"");
        assertThat(out).doesNotExist();
    }

    /** The same files in order of their names, in one process without the engine. */
    private String onOneMachine() throws IOException {
        Book book = Book.packaged();
        FilmLogReader reader = FilmLogReader.of(book.taxonomy());
        List<Log> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(logs)) {
            for (Path file : files.sorted().toList()) {
                ReadResult result = reader.read(file, FilmLogReader.Options.none());
                assertThat(result).isInstanceOf(ReadResult.Accepted.class);
                all.addAll(((ReadResult.Accepted) result).logs());
            }
        }
        return Json.text(book.assess(all).stream()
                .map(one -> AssessAnswer.of(one, Beside.NOTHING, true))
                .toList());
    }
}
