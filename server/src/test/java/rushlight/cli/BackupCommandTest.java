package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;
import rushlight.archive.EditResult;
import rushlight.archive.History;
import rushlight.archive.Opinions;
import rushlight.archive.Projections;
import rushlight.archive.SavedQuestions;
import rushlight.film.LogId;

/** A season's work goes into one file, and comes out of it on a machine that never saw it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class BackupCommandTest {
    @TempDir
    private static Path season;

    private static Path league;
    private static Path backup;

    @TempDir
    private Path clean;

    @BeforeAll
    static void a_season_of_work_is_backed_up() throws IOException {
        league = season.resolve("league");
        backup = season.resolve("friday.zip");
        assertThat(Said.to("demo", "--data", league.toString()).code()).isZero();
        Path notes =
                Files.writeString(season.resolve("friday.txt"), "[0:04] Overall, he could use a counter inside.\n");
        assertThat(Said.to(
                                "notes",
                                notes.toString(),
                                "--data",
                                league.toString(),
                                "--prospect",
                                "Teo Maravale",
                                "--evaluator",
                                "Dole Marrow",
                                "--save")
                        .code())
                .isZero();
        assertThat(Said.to("ask", "--data", league.toString(), "--save", "power", "edge players who win with power")
                        .code())
                .isZero();
        Files.writeString(league.resolve("overlay.ttl"), """
                @prefix kb: <https://rushlight.example/id/> .
                @prefix rl: <https://rushlight.example/def#> .
                kb:primary-without-counter rl:line 0.55 .
                """);
        try (Archive archive = Archive.open(league)) {
            LogId log = new LogId("m-ordway", "teo-maravale", "merrow-bay-at-calder-mill-2025-09-06");
            assertThat(archive.edits().remove(log, "r02", Optional.empty())).isInstanceOf(EditResult.Done.class);
            assertThat(archive.edits().remove(log, "r04", Optional.empty())).isInstanceOf(EditResult.Done.class);
            assertThat(archive.edits().undo(Optional.empty())).isInstanceOf(EditResult.Done.class);
        }
        Said said = Said.to("backup", backup.toString(), "--data", league.toString());
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).contains(" of history and ", "and read them back.");
        assertThat(season.resolve("friday.zip.part")).doesNotExist();
    }

    @Test
    void a_clean_machine_assesses_byte_for_byte_as_the_first_did() {
        Path folder = clean.resolve("film");

        Said said = Said.to("restore", backup.toString(), "--data", folder.toString());

        assertThat(said.err()).isEmpty();
        assertThat(said.code()).isZero();
        for (List<String> words : List.of(
                List.of("assess", "--all", "--format", "json"),
                List.of("ask", "--again", "power", "--format", "json"),
                List.of("agree", "--all", "--format", "json"),
                List.of("ask", "--saved"))) {
            assertThat(typed(words, folder)).as(words.get(0)).isEqualTo(typed(words, league));
        }
        assertThat(kept(folder)).isEqualTo(kept(league)).contains("Removed r04", "counter inside");
        assertThat(folder.resolve("overlay.ttl")).hasSameBinaryContentAs(league.resolve("overlay.ttl"));
        assertThat(folder.resolve("settings.json")).hasSameBinaryContentAs(league.resolve("settings.json"));
        assertThat(names(clean)).containsExactly("film");
    }

    @Test
    void a_restored_folder_is_worked_on_and_backed_up_as_any_other() throws IOException {
        Path folder = clean.resolve("film");
        assertThat(Said.to("restore", backup.toString(), "--data", folder.toString())
                        .code())
                .isZero();
        Path again = clean.resolve("again.zip");
        assertThat(Said.to("backup", again.toString(), "--data", folder.toString())
                        .code())
                .isZero();

        assertThat(lines(again)).isEqualTo(lines(backup));
        try (Archive archive = Archive.open(folder)) {
            assertThat(archive.edits().undo(Optional.empty())).isInstanceOf(EditResult.Done.class);
        }
    }

    @Test
    void a_folder_that_holds_something_is_left_alone_and_with_force_kept_aside() throws IOException {
        Path folder = Files.createDirectory(clean.resolve("film"));
        Files.writeString(folder.resolve("mine.txt"), "mine");

        Said refused = Said.to("restore", backup.toString(), "--data", folder.toString());

        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("is not empty", "--force", "Nothing was touched.");
        assertThat(names(folder)).containsExactly("mine.txt");

        Said forced = Said.to("restore", backup.toString(), "--data", folder.toString(), "--force");

        assertThat(forced.out()).contains("What was there before is in " + folder + ".before-");
        assertThat(names(clean)).hasSize(2).anyMatch(name -> name.startsWith("film.before-"));
        assertThat(folder.resolve("mine.txt")).doesNotExist();
        assertThat(Said.to("assess", "--data", folder.toString(), "Teo Maravale")
                        .code())
                .isZero();
    }

    @Test
    void a_backup_cut_off_anywhere_is_refused_in_a_sentence_and_nothing_is_touched() throws IOException {
        byte[] whole = Files.readAllBytes(backup);
        for (double share : new double[] {0, 0.001, 0.3, 0.9, 0.9999}) {
            Path cut = Files.write(clean.resolve("cut.zip"), Arrays.copyOf(whole, (int) (whole.length * share)));

            refused(cut, "cannot be used");
        }
    }

    @Test
    void a_byte_that_turned_over_on_the_way_is_found() throws IOException {
        byte[] whole = Files.readAllBytes(backup);
        for (int place : new int[] {whole.length / 3, whole.length / 2, whole.length * 9 / 10}) {
            byte[] turned = whole.clone();
            turned[place] ^= 0x10;

            refused(Files.write(clean.resolve("turned.zip"), turned), "cannot be used");
        }
    }

    @Test
    void a_backup_with_another_film_under_its_sums_or_a_film_it_did_not_count_is_refused() throws IOException {
        refused(changed("store.nq", text -> text + "<x:a> <x:b> \"c\" .\n", Map.of()), "checksum");
        refused(
                changed(
                        "manifest.json",
                        text -> text.replaceFirst("\"readings\" : \\d+", "\"readings\" : 1"),
                        Map.of()),
                "it says that it holds");
        refused(
                changed("manifest.json", text -> text.replaceFirst("\"format\" : 1", "\"format\" : 7"), Map.of()),
                "format 7, this one knows 1");
        refused(
                changed("manifest.json", text -> text.replaceFirst("\"layout\" : \\d+", "\"layout\" : 77"), Map.of()),
                "layout 77, this one knows 2");
        refused(changed("manifest.json", text -> "[]", Map.of()), "cannot be used");
        refused(changed("manifest.json", text -> "no json", Map.of()), "cannot be read");
    }

    @Test
    void a_file_that_would_climb_out_of_the_folder_or_fill_the_disk_is_refused() throws IOException {
        refused(changed("store.nq", text -> text, Map.of("../../climbed.txt", new byte[1])), "../../climbed.txt");
        assertThat(clean.resolveSibling("climbed.txt")).doesNotExist();
        refused(changed("overlay.ttl", text -> " ".repeat(50_000_000), Map.of()), "checksum");
        refused(
                changed(
                        "manifest.json",
                        text -> text.replaceFirst(
                                "\"name\" : \"store.nq\",\\s*\"bytes\" : \\d+",
                                "\"name\" : \"store.nq\", \"bytes\" : 900000000000"),
                        Map.of()),
                "as no film does");
        refused(Files.writeString(clean.resolve("notes.zip"), "friday"), "cannot be used");
        refused(clean.resolve("nothing.zip"), "There is no file");
    }

    @Test
    void a_folder_that_is_held_names_the_holder_and_the_other_way() {
        try (Archive held = Archive.open(clean.resolve("held"))) {
            Said said = Said.to(
                    "backup",
                    clean.resolve("b.zip").toString(),
                    "--data",
                    clean.resolve("held").toString());

            assertThat(held.logs()).isEmpty();
            assertThat(said.code()).isEqualTo(3);
            assertThat(said.isPolite().err())
                    .contains("is in use by process " + ProcessHandle.current().pid())
                    .contains("Let that program end, or stop it")
                    .doesNotContain("curl", "localhost");
            held.shownAt("http://localhost:7471/");
            Said shown = Said.to(
                    "backup",
                    clean.resolve("b.zip").toString(),
                    "--data",
                    clean.resolve("held").toString());
            assertThat(shown.isPolite().err())
                    .contains("curl -o " + clean.resolve("b.zip") + " http://localhost:7471/api/backup");
            Said over = Said.to(
                    "restore",
                    backup.toString(),
                    "--force",
                    "--data",
                    clean.resolve("held").toString());
            assertThat(over.code()).isEqualTo(3);
            assertThat(over.isPolite().err()).contains("is in use by process");
        }
        assertThat(names(clean)).containsExactly("held");
    }

    private void refused(Path file, String because) throws IOException {
        Path folder = clean.resolve("film");

        Said said = Said.to("restore", file.toString(), "--data", folder.toString());

        assertThat(said.code()).as(said.err()).isEqualTo(1);
        assertThat(said.isPolite().err().lines()).singleElement().asString().contains(because);
        assertThat(said.out()).isEmpty();
        Files.deleteIfExists(file);
        assertThat(names(clean)).isEmpty();
    }

    /** The backup with one of its files, or more files, than it had. */
    private Path changed(String name, UnaryOperator<String> change, Map<String, byte[]> more) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(backup.toFile())) {
            for (ZipEntry entry : (Iterable<ZipEntry>) zip.stream().map(ZipEntry.class::cast)::iterator) {
                try (InputStream in = zip.getInputStream(entry)) {
                    files.put(entry.getName(), in.readAllBytes());
                }
            }
        }
        assertThat(files).containsKey(name);
        files.computeIfPresent(
                name,
                (n, bytes) ->
                        change.apply(new String(bytes, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
        files.putAll(more);
        Path file = clean.resolve("changed.zip");
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(each.getKey()));
                zip.write(each.getValue());
                zip.closeEntry();
            }
        }
        return file;
    }

    private static String typed(List<String> words, Path folder) {
        Said said = Said.to(Stream.concat(words.stream(), Stream.of("--data", folder.toString()))
                .toArray(String[]::new));
        assertThat(said.code()).as(said.err()).isZero();
        return said.out().replace(folder.toString(), "");
    }

    private static String kept(Path folder) {
        try (Archive archive = Archive.open(folder)) {
            return History.latest(archive.store(), 1_000) + "\n"
                    + SavedQuestions.of(archive).all() + "\n"
                    + Opinions.of(archive).of("teo-maravale") + "\n"
                    + Projections.of(archive).revision() + "\n"
                    + archive.store().whole().holdings() + "\n" + archive.logs();
        }
    }

    private static List<String> lines(Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile());
                InputStream in = zip.getInputStream(zip.getEntry("store.nq"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .sorted()
                    .toList();
        }
    }

    private static List<String> names(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
