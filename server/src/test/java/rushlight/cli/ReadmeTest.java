package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the first page shows of two men of the demo is what the program prints of them; dots stand for what is left out. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ReadmeTest {
    private static final Path README = Path.of("..", "README.md");

    @TempDir
    private Path folder;

    @Test
    void what_the_readme_shows_of_a_man_is_what_is_printed_under_his_name() throws IOException {
        assertThat(run("import", "../demo-data/prospects.csv", log("tavish-mordell"), log("keverne-toll")))
                .isNotEmpty();
        for (String man : List.of("Tavish Mordell", "Keverne Toll")) {
            String printed = run("assess", man);
            List<String> shown =
                    blocks().filter(block -> block.startsWith(man + " ")).toList();

            assertThat(shown).as(man).hasSize(1);
            int from = 0;
            for (String part : shown.get(0).split("(?m)^\\.\\.\\.\\n", -1)) {
                assertThat(printed.indexOf(part, from)).as(part).isNotNegative();
                from = printed.indexOf(part, from) + part.length();
            }
        }
        assertThat(blocks()).filteredOn(block -> block.startsWith("Depends")).isEmpty();
    }

    /** What stands between fences. */
    private static Stream<String> blocks() throws IOException {
        String[] parts = Files.readString(README).split("(?m)^```\\n", -1);
        return Stream.iterate(1, i -> i < parts.length, i -> i + 2).map(i -> parts[i]);
    }

    private String run(String command, String... words) {
        Said said = Said.to(Stream.concat(Stream.of(command, "--data", folder.toString()), Stream.of(words))
                .toArray(String[]::new));
        assertThat(said.code()).isZero();
        return said.out();
    }

    private static String log(String man) {
        return "../demo-data/logs/" + man + ".csv";
    }
}
