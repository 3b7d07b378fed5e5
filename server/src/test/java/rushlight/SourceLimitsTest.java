package rushlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SourceLimitsTest {
    private static final int LINES = 250;
    private static final int FOLDERS = 2;

    @Test
    void program_files_fit_in_one_reading() throws IOException {
        assertThat(files(Path.of("src/main/java")))
                .hasSizeGreaterThan(40)
                .allSatisfy(file -> assertThat(file)
                        .content()
                        .matches(text -> text.lines().count() <= LINES, "has at most " + LINES + " lines"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../ontology", "../client-web", "../demo-data"})
    void data_folders_stay_shallow(String root) throws IOException {
        assertThat(files(Path.of(root)))
                .filteredOn(file -> !file.startsWith(root + "/src") && !file.startsWith(root + "/target"))
                .isNotEmpty()
                .allSatisfy(file -> assertThat(Path.of(root).relativize(file).getNameCount() - 1)
                        .isLessThanOrEqualTo(FOLDERS));
    }

    private static List<Path> files(Path root) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }
}
