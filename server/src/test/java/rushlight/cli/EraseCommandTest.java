package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;
import rushlight.archive.EditResult;
import rushlight.archive.History;
import rushlight.archive.Projections;
import rushlight.archive.SavedQuestions;
import rushlight.film.LogId;
import rushlight.film.Projection;

/** A player, or his parents, may have what is kept of him, and may have it gone. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class EraseCommandTest {
    private static final String FILM = """
            rep,prospect,game,phase,alignment,exchange,result,evaluator,note
            r1,Oren Halloway,Mill Night,pass-rush,technique-9,bull-rush,won,Lee Arden,Oren at his best
            r2,Oren Halloway,Mill Night,pass-rush,technique-9,rip,lost,Lee Arden,
            s1,Silas Penhallow,Mill Night,pass-rush,technique-5,spin,won,Lee Arden,better than Oren Halloway here
            s2,Silas Penhallow,Mill Night,pass-rush,technique-5,rip,won,Lee Arden,
            """;
    private static final String ONLY_HIS =
            "rep,prospect,game,phase,exchange,result\nr9,Oren Halloway,Halloway Day,pass-rush,spin,won\n";

    @TempDir
    private Path place;

    private Path folder = Path.of("");

    @Test
    void everything_of_him_is_given_out_and_then_goes_and_the_others_stay() throws IOException {
        keep();
        Path zip = place.resolve("him.zip");

        Said given = said("export", "--person", "oren-halloway", zip.toString());
        assertThat(given.out()).contains("everything that is kept of Oren Halloway");
        Map<String, String> files = unpacked(zip);
        assertThat(files.keySet()).containsExactly("everything.trig", "film.csv", "prospect.csv", "read-me.txt");
        assertThat(files.get("film.csv"))
                .contains("Oren at his best", "Halloway Day")
                .doesNotContain("Penhallow");
        assertThat(files.get("everything.trig"))
                .contains("Wears down on him late.", "edge players like Oren Halloway", "was/", "Oren at his best")
                .doesNotContainIgnoringCase("penhallow");

        assertThat(said("erase", "Oren Halloway", "--confirm", "Silas Penhallow")
                        .code())
                .isEqualTo(2);
        assertThat(said("erase", "Nobody Known").err()).contains("There is no film of \"Nobody Known\"");
        assertThat(filesThatName("halloway")).as("nothing went yet").isNotEmpty();

        Said erased = said("erase", "Oren Halloway", "--confirm", "Oren Halloway");
        assertThat(erased.code()).as(erased.err()).isZero();
        assertThat(erased.out())
                .contains("Erased Oren Halloway: 2 logs", "blacked out in 1 text", "Backups, exports and prints");
        assertThat(filesThatName("oren halloway")).isEmpty();
        assertThat(filesThatName("oren-halloway")).isEmpty();
        assertThat(filesThatName("his best")).isEmpty();
        assertThat(filesThatName("down on him late")).isEmpty();

        try (Archive archive = Archive.open(folder)) {
            assertThat(archive.prospects()).extracting(p -> p.name()).containsExactly("Silas Penhallow");
            assertThat(archive.assess("oren-halloway")).isEmpty();
            assertThat(archive.assess("silas-penhallow").orElseThrow().reps()).isEqualTo(2);
            assertThat(archive.logs()).hasSize(1);
            assertThat(archive.logs().get(0).readings().get(0).one("note")).contains("better than [erased] here");
            assertThat(archive.store().game("mill-night")).isPresent();
            assertThat(archive.store().game("halloway-day")).isEmpty();
            assertThat(SavedQuestions.of(archive).all())
                    .extracting(one -> one.name())
                    .containsExactly("power");
            List<History.Told> changes = History.latest(archive.store(), 10);
            assertThat(changes.get(0).change().said()).isEqualTo("Erased everything of one player.");
            assertThat(changes.toString()).doesNotContainIgnoringCase("halloway");
            assertThat(archive.edits().undo(Optional.of(changes.get(0).change().revision())))
                    .as("it cannot be taken back")
                    .isInstanceOf(EditResult.Refused.class);
            LogId his = new LogId("lee-arden", "silas-penhallow", "mill-night");
            assertThat(archive.edits().remove(his, "s2", Optional.empty())).isInstanceOf(EditResult.Done.class);
        }
        assertThat(folder.resolve("audit.jsonl"))
                .content()
                .contains("rushlight erase ")
                .doesNotContain("oren");
    }

    @Test
    void an_erasing_that_was_cut_short_is_finished_by_the_next() throws IOException {
        keep();
        Files.writeString(folder.resolve("erasing"), "");

        assertThat(said("erase", "Silas Penhallow", "--confirm", "Silas Penhallow")
                        .code())
                .isZero();
        assertThat(folder.resolve("erasing")).doesNotExist();
        assertThat(filesThatName("penhallow")).isEmpty();
        try (Archive archive = Archive.open(folder)) {
            assertThat(archive.assess("oren-halloway").orElseThrow().reps()).isEqualTo(3);
        }
    }

    private void keep() throws IOException {
        folder = place.resolve("film");
        Path film = Files.writeString(place.resolve("friday.csv"), FILM);
        Path more = Files.writeString(place.resolve("oren-halloway.csv"), ONLY_HIS);
        assertThat(said("import", film.toString(), more.toString()).code()).isZero();
        try (Archive archive = Archive.open(folder)) {
            LogId log = new LogId("lee-arden", "oren-halloway", "mill-night");
            assertThat(archive.edits().remove(log, "r2", Optional.empty())).isInstanceOf(EditResult.Done.class);
            archive.edits().undo(Optional.empty());
            SavedQuestions.of(archive).save("like him", "edge players like Oren Halloway", "");
            SavedQuestions.of(archive).save("power", "edge players who win with power", "");
            Projections.of(archive)
                    .keep(
                            new Projection(
                                    "oren-halloway",
                                    "Lee Arden",
                                    "",
                                    "",
                                    "",
                                    "",
                                    "",
                                    "Wears down on him late.",
                                    "",
                                    ""),
                            0);
        }
    }

    /** Files of the data folder in whose bytes some words stand. */
    private List<Path> filesThatName(String words) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> text(file).toLowerCase(Locale.ROOT).contains(words))
                    .toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Map<String, String> unpacked(Path zip) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private Said said(String... words) {
        String[] all = Stream.concat(Stream.of(words), Stream.of("--data", folder.toString()))
                .toArray(String[]::new);
        return Said.to(all).isPolite();
    }
}
