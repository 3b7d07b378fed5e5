package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FolderLockTest {
    @TempDir
    private Path folder;

    @Test
    void the_second_who_comes_is_told_who_holds_the_folder_and_what_to_do() {
        try (FolderLock first = FolderLock.take(folder)) {
            assertThat(first).isNotNull();
            assertThatThrownBy(() -> FolderLock.take(folder))
                    .isInstanceOf(FolderException.class)
                    .hasMessageContaining(
                            "is in use by process " + ProcessHandle.current().pid())
                    .hasMessageContaining("or name another folder with --data");
        }
    }

    @Test
    void who_finds_the_folder_with_a_server_is_told_where_that_shows_it_and_of_no_other_address() {
        try (FolderLock first = FolderLock.take(folder)) {
            assertThatThrownBy(() -> FolderLock.take(folder)).hasMessageNotContaining("http");
            first.shownAt("http://localhost:7471/");

            assertThatThrownBy(() -> FolderLock.take(folder))
                    .isInstanceOf(FolderInUseException.class)
                    .hasMessageContaining("a server at http://localhost:7471/. Ask, import and print there")
                    .hasMessageNotContaining("curl");
        }
        try (FolderLock next = FolderLock.take(folder)) {
            assertThat(next).isNotNull();
            assertThatThrownBy(() -> FolderLock.take(folder)).hasMessageNotContaining("http");
        }
    }

    @Test
    void a_file_is_no_data_folder() throws IOException {
        Path file = Files.writeString(folder.resolve("friday.csv"), "rep");

        assertThatThrownBy(() -> FolderLock.make(file)).hasMessageContaining("friday.csv is a file, not a folder");
    }

    @Test
    void a_folder_given_back_can_be_taken_again() {
        FolderLock.take(folder).close();

        try (FolderLock again = FolderLock.take(folder)) {
            assertThat(again).isNotNull();
        }
    }

    @Test
    void settings_remember_evaluators_in_the_order_they_came() {
        Settings.in(folder).withEvaluators(List.of("b", "a")).save(folder);
        Settings.in(folder).withEvaluators(List.of("a", "c")).save(folder);

        assertThat(Settings.in(folder).evaluators()).containsExactly("b", "a", "c");
    }

    @Test
    void a_folder_of_a_newer_layout_is_left_alone() throws IOException {
        Files.writeString(folder.resolve("settings.json"), "{\"format\": 99, \"evaluators\": []}");

        assertThatThrownBy(() -> Settings.in(folder)).hasMessageContaining("was written by a newer Rushlight");
    }

    @Test
    void settings_that_are_no_json_are_told_by_their_file() throws IOException {
        Files.writeString(folder.resolve("settings.json"), "evaluators: me");

        assertThatThrownBy(() -> Settings.in(folder))
                .isInstanceOf(FolderException.class)
                .hasMessageContaining("settings.json is not the JSON it should be");
    }
}
