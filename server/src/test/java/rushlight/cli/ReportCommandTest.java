package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;
import rushlight.archive.DemoLeague;
import rushlight.archive.ReportSheets;
import rushlight.notes.Narration;
import rushlight.notes.Narrations;

/** A report as it is asked for on the command line. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ReportCommandTest {
    @TempDir
    private static Path folder;

    @BeforeAll
    static void a_league_is_there() {
        try (Archive archive = Archive.open(folder.resolve("data"))) {
            DemoLeague.into(archive);
        }
    }

    @Test
    void a_report_takes_the_place_of_the_old_one_whole_and_leaves_nothing_beside_it() throws IOException {
        Path out = Files.createDirectory(folder.resolve("out"));
        Path file = out.resolve("mordell.pdf");
        Files.writeString(file, "an old report");

        Said said = report("Tavish Mordell", "-o", file.toString(), "--paper", "a4");

        assertThat(said.code()).isZero();
        assertThat(said.out()).isEqualTo("Wrote " + file + "." + System.lineSeparator());
        assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void the_summary_that_an_evaluator_wrote_is_in_it() throws IOException {
        try (Archive archive = Archive.open(folder.resolve("data"))) {
            assertThat(ReportSheets.of(archive).keep("jem-sorrelby", "He bends & finishes.", "A. Reader", List.of(), 0))
                    .isPresent();
        }
        Path file = folder.resolve("sorrelby.html");

        assertThat(report("jem-sorrelby", "-o", file.toString()).code()).isZero();
        assertThat(Files.readString(file)).contains("He bends &amp; finishes.").contains("Written by A. Reader, ");
    }

    @Test
    void the_reps_behind_what_stands_are_chapters_of_their_films() throws IOException {
        Path clips = folder.resolve("clips");

        Said said = report("Tavish Mordell", "--format", "clips", "-o", clips.toString());

        assertThat(said.code()).isZero();
        try (Stream<Path> files = Files.list(clips)) {
            for (Path file : files.toList()) {
                Narration read = Narrations.read(file.toString(), Files.readAllBytes(file));
                assertThat(read.diagnostics()).as(file.toString()).isEmpty();
                assertThat(read.cues()).as(file.toString()).isNotEmpty();
                assertThat(read.cues())
                        .extracting(cue -> cue.start().orElseThrow())
                        .isSorted();
            }
        }
        assertThat(clips.resolve("at-stonefen-cutup.vtt")).content().contains("00:00:06.000 --> 00:00:13.500\nr01: ");
    }

    @Test
    void a_link_opens_the_film_at_the_rep() throws IOException {
        Path file = folder.resolve("links.txt");

        assertThat(report("Tavish Mordell", "--format", "links", "-o", file.toString())
                        .code())
                .isZero();
        assertThat(Files.readAllLines(file))
                .anySatisfy(line ->
                        assertThat(line).startsWith("at-stonefen-cutup.mp4#t=6,13.5\tCalder Mill at Stonefen\tr01: "));
    }

    @Test
    void who_nobody_knows_gets_the_nearest_names_and_no_file() {
        Path file = folder.resolve("nobody.pdf");

        Said said = report("Tavish Mordant", "-o", file.toString());

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.isPolite().err()).contains("There is no film of \"Tavish Mordant\". Nearest: Tavish Mordell");
        assertThat(file).doesNotExist();
    }

    @Test
    void an_ending_that_no_report_has_is_refused_and_nothing_is_written() {
        Path word = folder.resolve("x.docx");
        Path page = folder.resolve("x.html");

        Said said = report("Tavish Mordell", "-o", word.toString());
        Said asked = report("Tavish Mordell", "--format", "pdf", "-o", page.toString());

        assertThat(said.code()).isEqualTo(2);
        assertThat(said.isPolite().err()).startsWith("A report ends in .pdf or .html; no x.docx was written.");
        assertThat(asked.code()).isEqualTo(2);
        assertThat(asked.isPolite().err()).startsWith("A report as pdf ends in .pdf; no x.html was written.");
        assertThat(word).doesNotExist();
        assertThat(page).doesNotExist();
    }

    @Test
    void a_folder_that_is_not_there_and_a_paper_nobody_sells_are_told() {
        Said nowhere =
                report("Tavish Mordell", "-o", folder.resolve("no/such.pdf").toString());
        Said paper = report("Tavish Mordell", "--paper", "a5");

        assertThat(nowhere.code()).isEqualTo(1);
        assertThat(nowhere.isPolite().err()).startsWith("There is no folder ").contains("nothing was written");
        assertThat(paper.code()).isEqualTo(2);
        assertThat(paper.isPolite().err()).contains("The paper is letter or a4, not \"a5\".");
    }

    private static Said report(String... words) {
        String[] all = Stream.concat(
                        Stream.of("report", "--data", folder.resolve("data").toString()), Stream.of(words))
                .toArray(String[]::new);
        return Said.to(all);
    }
}
