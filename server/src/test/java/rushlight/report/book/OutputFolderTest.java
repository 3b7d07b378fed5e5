package rushlight.report.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(ReplaceUnderscores.class)
class OutputFolderTest {
    @TempDir
    private Path temp;

    @Test
    void a_new_folder_is_made_with_everything_above_it() throws IOException {
        Path folder = temp.resolve("a/b/book");
        assertThat(new OutputFolder(folder).objections(false)).isEmpty();
        write(folder, Map.of("index.html", "one", "concept/x.html", "two"));
        assertThat(Files.readString(folder.resolve("concept/x.html"))).isEqualTo("two");
        assertThat(entries(temp.resolve("a/b"))).containsExactly(folder);
    }

    @Test
    void an_empty_folder_may_be_filled() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("book"));
        assertThat(new OutputFolder(folder).objections(false)).isEmpty();
        write(folder, Map.of("index.html", "one"));
        assertThat(folder.resolve("index.html")).exists();
    }

    @Test
    void a_folder_with_other_files_is_left_alone_even_when_told_to_replace() throws IOException {
        Files.writeString(temp.resolve("thesis.txt"), "mine");
        assertThat(new OutputFolder(temp).objections(true))
                .singleElement()
                .asString()
                .contains("other files");
    }

    @Test
    void a_file_is_no_folder() throws IOException {
        Path file = Files.writeString(temp.resolve("book"), "mine");
        assertThat(new OutputFolder(file).objections(true))
                .singleElement()
                .asString()
                .contains("is a file");
    }

    @Test
    void an_earlier_book_is_replaced_only_when_told_to_and_pages_that_went_go() throws IOException {
        Path folder = temp.resolve("book");
        write(folder, Map.of("index.html", "one", "old.html", "gone soon"));
        assertThat(new OutputFolder(folder).objections(false))
                .singleElement()
                .asString()
                .contains("--force");
        assertThat(new OutputFolder(folder).objections(true)).isEmpty();
        write(folder, Map.of("index.html", "two"));
        assertThat(Files.readString(folder.resolve("index.html"))).isEqualTo("two");
        assertThat(folder.resolve("old.html")).doesNotExist();
        assertThat(entries(temp)).containsExactly(folder);
    }

    @Test
    void what_somebody_put_beside_the_pages_stays() throws IOException {
        Path folder = temp.resolve("book");
        write(folder, Map.of("concept/x.html", "one"));
        Files.writeString(folder.resolve("concept/notes.txt"), "mine");
        Files.writeString(folder.resolve("mine.txt"), "mine too");
        write(folder, Map.of("index.html", "two"));
        assertThat(folder.resolve("concept/notes.txt")).hasContent("mine");
        assertThat(folder.resolve("mine.txt")).hasContent("mine too");
        assertThat(folder.resolve("concept/x.html")).doesNotExist();
    }

    @Test
    void a_page_that_somebody_changed_is_not_overwritten() throws IOException {
        Path folder = temp.resolve("book");
        write(folder, Map.of("style.css", "one"));
        Files.writeString(folder.resolve("style.css"), "my colors");
        assertThat(new OutputFolder(folder).objections(true))
                .singleElement()
                .asString()
                .contains("style.css was changed");
        assertThat(folder.resolve("style.css")).hasContent("my colors");
    }

    @Test
    void a_file_of_somebody_where_a_page_would_go_is_told() throws IOException {
        Path folder = temp.resolve("book");
        write(folder, Map.of("index.html", "one"));
        Files.writeString(folder.resolve("new.html"), "mine");
        assertThat(new OutputFolder(folder).inTheWay(Set.of("new.html", "index.html")))
                .singleElement()
                .asString()
                .contains("new.html is not ours");
    }

    @Test
    void a_writing_that_breaks_leaves_what_was_there_and_nothing_half() throws IOException {
        Path folder = temp.resolve("book");
        write(folder, Map.of("index.html", "one"));
        Map<String, String> impossible = Map.of("a", "a file", "a/b.html", "cannot lie in a file");
        assertThatThrownBy(() -> write(folder, impossible)).isInstanceOf(UncheckedIOException.class);
        assertThat(folder.resolve("index.html")).hasContent("one");
        assertThat(entries(temp)).containsExactly(folder);
    }

    private static List<Path> entries(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.toList();
        }
    }

    private static void write(Path folder, Map<String, String> files) {
        TreeMap<String, byte[]> pages = new TreeMap<>();
        files.forEach((name, text) -> pages.put(name, text.getBytes(StandardCharsets.UTF_8)));
        new OutputFolder(folder).write(pages);
    }
}
