package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder outlives programs: an older one is brought along, a newer one is left alone. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LayoutsTest {
    private static final Book BOOK = Book.packaged();

    @TempDir
    private Path folder;

    @Test
    void a_folder_of_layout_1_is_opened_as_one_of_today_and_whoever_was_in_no_list_stays_last() throws IOException {
        KilledWriter.write(BOOK, 3, folder, 0, 1);
        settings("{\"format\": 1, \"evaluators\": [\"Eyes 9\"]}");

        try (Archive archive = Archive.open(folder, () -> BOOK, Layouts.KNOWN)) {
            assertThat(archive.logs()).hasSize(2);
        }

        assertThat(Settings.in(folder).format()).isEqualTo(2);
        assertThat(Settings.in(folder).evaluators()).containsExactly("Eyes 9", "Eyes 0", "Eyes 1");
    }

    @Test
    void a_made_up_older_layout_takes_every_step_in_order_and_one_that_was_cut_off_is_made_again() throws IOException {
        List<Integer> made = new ArrayList<>();
        Layouts layouts = new Layouts(Map.of(
                -1,
                (settings, store) -> {
                    made.add(-1);
                    return settings;
                },
                0,
                (settings, store) -> {
                    made.add(0);
                    return settings.withEvaluators(List.of("From Zero"));
                },
                1,
                (settings, store) -> {
                    made.add(1);
                    if (made.size() == 3) {
                        throw new IllegalStateException("The power goes.");
                    }
                    return settings;
                }));
        settings("{\"format\": -1, \"evaluators\": []}");

        assertThatThrownBy(() -> Archive.open(folder, () -> BOOK, layouts)).hasMessage("The power goes.");
        assertThat(Settings.in(folder).format()).isEqualTo(-1);
        Archive.open(folder, () -> BOOK, layouts).close();

        assertThat(made).containsExactly(-1, 0, 1, -1, 0, 1);
        assertThat(Settings.in(folder)).isEqualTo(new Settings(Settings.FORMAT, List.of("From Zero"), null, null));
    }

    @Test
    void a_layout_that_no_step_leads_from_is_left_alone() throws IOException {
        settings("{\"format\": -5, \"evaluators\": []}");

        assertThatThrownBy(() -> Archive.open(folder, () -> BOOK, Layouts.KNOWN))
                .isInstanceOf(FolderException.class)
                .hasMessageContaining("has layout -5, and nothing leads from there to layout 2");
    }

    @Test
    void a_newer_folder_is_refused_with_both_versions_though_it_holds_what_nobody_here_knows() throws IOException {
        settings("{\"format\": 99, \"evaluators\": {\"by\": \"team\"}, \"unheardOf\": true}");

        assertThatThrownBy(() -> Archive.open(folder, () -> BOOK, Layouts.KNOWN))
                .isInstanceOf(FolderException.class)
                .hasMessageContaining("written by a newer Rushlight (layout 99, this one knows 2)");
        assertThat(folder.resolve("store")).doesNotExist();
    }

    private void settings(String text) throws IOException {
        Files.writeString(folder.resolve("settings.json"), text);
    }
}
