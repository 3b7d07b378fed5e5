package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The one jar that people run. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PackedProgramIT {
    private static final Path JAR = Path.of(System.getProperty("rushlight.jar", "rushlight.jar is not set"));

    private record Run(int code, String out, String err) {}

    @Test
    void holds_the_services_of_every_library() throws IOException {
        try (FileSystem jar = FileSystems.newFileSystem(JAR)) {
            assertThat(Files.readString(jar.getPath("META-INF/services/org.apache.jena.sys.JenaSubsystemLifecycle")))
                    .contains("InitRIOT", "InitARQ", "InitTDB2", "InitShacl", "InitJenaCore");
            assertThat(Files.readString(jar.getPath("META-INF/services/org.apache.lucene.codecs.Codec")))
                    .contains("Lucene912Codec");
        }
    }

    @Test
    void assesses_the_league_for_a_newcomer_and_again_the_same(@TempDir Path folder) throws Exception {
        Run first = run("demo", "--data", folder.resolve("league").toString());
        Run second = run("demo", "--data", folder.resolve("league").toString());

        assertThat(first.err()).isEmpty();
        assertThat(first.code()).isZero();
        assertThat(first.out()).contains("18 prospects", "What he lacks", "No inside counter", "Ask his coach:");
        assertThat(second.out()).isEqualTo(first.out());

        Run plan = run(
                "plan",
                "Jem Sorrelby",
                "--weeks",
                "1",
                "--data",
                folder.resolve("league").toString());
        assertThat(plan.out())
                .contains("Certified coaches and licensed medical staff decide", "WEEK 1")
                .doesNotContain("ot proven best");
    }

    @Test
    void tells_its_version_and_refuses_a_word_it_does_not_know() throws Exception {
        assertThat(run("--version").out()).startsWith("rushlight 0.1.0");

        Run unknown = run("asses");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("assess").doesNotContain("Exception");
    }

    @Test
    void publishes_the_book_and_leaves_a_folder_of_other_files_alone(@TempDir Path folder) throws Exception {
        Path book = folder.resolve("a book");
        String nobodys = folder.resolve("none").toString();

        Run first = run("publish", book.toString(), "--data", nobodys);
        Run second = run("publish", book.toString(), "--data", nobodys);
        Run other = run("publish", folder.toString(), "--data", nobodys, "--force");

        assertThat(first.err()).isEmpty();
        assertThat(first.code()).isZero();
        assertThat(first.out()).contains("index.html");
        assertThat(book.resolve("concept/bull-rush.html")).content().contains("<h1>bull rush</h1>", "<svg");
        assertThat(book.resolve("rushlight.jsonld")).content().contains("kb:bull-rush");
        assertThat(second.code()).isEqualTo(1);
        assertThat(second.err()).contains("--force", "Nothing was written.");
        assertThat(other.code()).isEqualTo(1);
        assertThat(other.err()).contains("other files");
    }

    @Test
    void the_launcher_starts_it_whatever_became_of_what_makes_starts_quick(@TempDir Path home) throws Exception {
        Path target = Files.createDirectories(home.resolve("server/target"));
        Path launcher =
                Files.copy(Path.of("../rushlight"), home.resolve("rushlight"), StandardCopyOption.COPY_ATTRIBUTES);
        Files.createSymbolicLink(target.resolve(JAR.getFileName()), JAR.toAbsolutePath());
        Path quick = Files.createDirectories(target.resolve("quick"));
        Path library = Files.createDirectories(quick.resolve("native"));
        Files.writeString(library.resolve(System.mapLibraryName("jniortools")), "no library");
        Files.writeString(quick.resolve("classes.jsa"), "no archive");
        // It is taken for one that is being made, so that none is made here.
        Files.createDirectories(target.resolve("quick.new"));

        Files.writeString(quick.resolve("size"), "10\n");
        Run spoiled = launch(List.of(launcher.toString(), "--version"));
        Files.writeString(quick.resolve("size"), "4711\n");
        Run halved = launch(List.of(launcher.toString(), "--version"));
        Files.delete(quick.resolve("classes.jsa"));
        Run missing = launch(List.of(launcher.toString(), "--version"));

        assertThat(List.of(spoiled, halved, missing)).allSatisfy(run -> {
            assertThat(run.code()).isZero();
            assertThat(run.out()).startsWith("rushlight 0.1.0");
            assertThat(run.err()).isEmpty();
        });
    }

    private static Run run(String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()));
        command.addAll(List.of(args));
        return launch(command);
    }

    private static Run launch(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("rushlight", ".out");
        Path err = Files.createTempFile("rushlight", ".err");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        Process process = builder.start();
        int code = process.waitFor();
        return new Run(
                code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }
}
