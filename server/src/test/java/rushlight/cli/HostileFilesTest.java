package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Archive;
import rushlight.film.csv.SpoiltLog;

/** What people really hand in: one clear sentence each, never the inside of the program. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class HostileFilesTest {
    private static final String HEADER = "rep,prospect,game,phase,result\n";
    private static final int FIFTY_MEGABYTES = 50 << 20;

    @TempDir
    private Path place;

    @Test
    void each_unreadable_file_gets_one_clear_sentence_and_nothing_is_stored() throws IOException {
        byte[] latin = (HEADER + "r1,Oren Halloway,Caf\u00e9 Night,run,won\n").getBytes(StandardCharsets.ISO_8859_1);
        Path notUtf8 = Files.write(place.resolve("latin.csv"), latin);
        Path openQuote = file("quote.csv", HEADER + "r1,\"Oren Halloway,Mill Night,run,won\nr2,a,b,run,won\n");
        byte[] line = new byte[FIFTY_MEGABYTES];
        Arrays.fill(line, (byte) 'a');
        Path longLine = Files.write(place.resolve("long.csv"), line);
        Path empty = file("empty.csv", "");
        Path folder = Files.createDirectory(place.resolve("film.csv"));
        Path sheet = Files.write(place.resolve("sheet.csv"), new byte[] {'P', 'K', 3, 4, 20, 0, 6, 0});
        Path semicolons = file("semicolons.csv", HEADER.replace(',', ';'));
        Path good = file("good.csv", HEADER + "r1,Oren Halloway,Mill Night,run,won\n");

        Said said = run(
                        "import",
                        "--data",
                        data(),
                        good.toString(),
                        notUtf8.toString(),
                        openQuote.toString(),
                        longLine.toString(),
                        empty.toString(),
                        folder.toString(),
                        place.resolve("nowhere.csv").toString(),
                        sheet.toString(),
                        semicolons.toString())
                .isPolite();

        assertThat(said.code()).isEqualTo(1);
        List<String> told = said.complaints();
        assertThat(told).hasSize(9).allSatisfy(l -> assertThat(l).endsWith("."));
        assertThat(told.get(0)).startsWith("latin.csv: ").contains("UTF-8");
        assertThat(told.get(1)).startsWith("quote.csv: ").contains("Line 2").contains("quote");
        assertThat(told.get(2)).startsWith("long.csv: ").contains("long");
        assertThat(told.get(3)).startsWith("empty.csv is empty");
        assertThat(told.get(4)).contains("is a folder");
        assertThat(told.get(5)).contains("There is no file");
        assertThat(told.get(6)).contains("spreadsheet");
        assertThat(told.get(7)).contains("semicolons");
        assertThat(told.get(8))
                .isEqualTo("Nothing was imported. 8 faults to mend; --keep-good imports the rows without one.");
        assertThat(kept()).isZero();
    }

    @Test
    void where_no_row_is_good_nobody_is_told_to_keep_the_good_ones() throws IOException {
        Path empty = file("empty.csv", "");
        Path missing = place.resolve("gone.csv");

        Said said = run("import", "--data", data(), empty.toString(), missing.toString())
                .isPolite();

        assertThat(said.complaints())
                .containsExactly(
                        "empty.csv is empty; a film log starts with a row of column names: rep, prospect, game, ...",
                        "There is no file " + missing + ".",
                        "Nothing was imported. 2 faults to mend.");
    }

    @Test
    void two_hundred_faults_in_ten_thousand_rows_are_two_hundred_messages_and_nothing_is_stored() throws IOException {
        Path log = file("spoilt.csv", SpoiltLog.seeded(7L).text());

        Said said = run("import", "--data", data(), log.toString()).isPolite();

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.complaints())
                .filteredOn(l -> l.startsWith("spoilt.csv: Line "))
                .hasSize(SpoiltLog.FAULTS);
        assertThat(said.complaints()).last().asString().startsWith("Nothing was imported. 200 faults");
        assertThat(said.out()).isEmpty();
        assertThat(kept()).isZero();
        assertThat(place.resolve("spoilt.rejected.csv")).doesNotExist();
    }

    @Test
    void keep_good_imports_the_rest_and_the_mended_rows_join_them() throws IOException {
        Path log = file(
                "friday.csv",
                HEADER + "r1,Oren Halloway,Mill Night,run,won\nr2,Oren Halloway,Mill Night,run,wun\n"
                        + "r3,Oren Halloway,Mill Night,run,lost\n");

        Said first =
                run("import", "--keep-good", "--data", data(), log.toString()).isPolite();

        Path rejected = place.resolve("friday.rejected.csv");
        assertThat(first.code()).isEqualTo(1);
        assertThat(first.err())
                .contains("friday.csv: Line 3, result: ")
                .contains("\"wun\"")
                .contains("1 row was left out");
        assertThat(first.out()).startsWith("Imported 2 readings in 1 log into ");
        assertThat(Files.readAllLines(rejected))
                .hasSize(2)
                .last()
                .asString()
                .startsWith("r2,Oren Halloway,Mill Night,run,wun,")
                .contains("wun");

        Files.writeString(rejected, Files.readString(rejected).replaceFirst(",wun,", ",even,"));
        Said second =
                run("import", "--add", "--data", data(), rejected.toString()).isPolite();

        assertThat(second.code()).isZero();
        assertThat(second.out())
                .contains("Imported 3 readings in 1 log into ")
                .contains("1 replaced (2 readings went).");
        assertThat(kept()).isEqualTo(3);
    }

    @Test
    void a_list_of_prospects_is_known_by_its_header_wherever_it_stands() throws IOException {
        Path log = file("friday.csv", HEADER + "r1,Oren Halloway,Mill Night,run,won\n");
        Path list = file("who.csv", "name,height_in,team\nOren Halloway,76,Mill Valley\nLior Stane,75,Mill Valley\n");

        Said checked =
                run("check", "--data", data(), list.toString(), log.toString()).isPolite();
        Said said =
                run("import", "--data", data(), log.toString(), list.toString()).isPolite();

        assertThat(checked.code()).isZero();
        assertThat(checked.out().lines())
                .containsExactly(
                        "who.csv: 2 prospects, nothing to mend.", "friday.csv: 1 reading in 1 log, nothing to mend.");
        assertThat(said.code()).isZero();
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).startsWith("Know 2 prospects from who.csv.").contains("Imported 1 reading in 1 log");
        try (Archive archive = Archive.open(Path.of(data()))) {
            assertThat(archive.prospects()).anySatisfy(p -> {
                assertThat(p.name()).isEqualTo("Oren Halloway");
                assertThat(p.team()).isEqualTo("Mill Valley");
            });
        }
    }

    @Test
    void a_list_of_prospects_with_a_fault_stops_the_import() throws IOException {
        Path log = file("friday.csv", HEADER + "r1,Oren Halloway,Mill Night,run,won\n");
        Path list = file("who.csv", "name,height_in\nOren Halloway,tall\n");

        Said said =
                run("import", "--data", data(), list.toString(), log.toString()).isPolite();

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).contains("who.csv: Line 2, height_in: ").endsWith("Nothing was imported." + nl());
        assertThat(kept()).isZero();
    }

    @Test
    void a_broken_overlay_is_told_with_its_line() throws IOException {
        Path folder = Files.createDirectory(place.resolve("data"));
        Files.writeString(folder.resolve("overlay.ttl"), "@prefix kb: <https://rushlight.example/id/> .\nkb:a kb:b\n");

        Said said = run("check", "--data", folder.toString()).isPolite();

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .startsWith("mend   overlay.ttl")
                .contains("cannot be read as Turtle: ")
                .contains("line: 3");
        assertThat(said.err()).isEmpty();
    }

    @Test
    void a_folder_that_is_in_use_or_no_folder_at_all_is_told_so() throws IOException {
        Path log = file("friday.csv", HEADER + "r1,Oren Halloway,Mill Night,run,won\n");
        Said busy;
        try (Archive open = Archive.open(Path.of(data()))) {
            assertThat(open.prospects()).isEmpty();
            busy = run("import", "--data", data(), log.toString()).isPolite();
        }
        Said noFolder = run("import", "--data", log.resolve("below").toString(), log.toString())
                .isPolite();

        assertThat(busy.code()).isEqualTo(3);
        assertThat(busy.err())
                .contains("is in use by process " + ProcessHandle.current().pid())
                .contains("--data");
        assertThat(noFolder.code()).isEqualTo(3);
        assertThat(noFolder.err()).contains("cannot be made");
    }

    @Test
    void every_command_is_told_in_the_list_by_one_whole_sentence() {
        Said help = run("--help").isPolite();

        List<String> commands = help.out()
                .lines()
                .dropWhile(l -> !l.equals("Commands:"))
                .skip(1)
                .takeWhile(l -> !l.isBlank())
                .toList();
        assertThat(commands)
                .hasSizeGreaterThan(10)
                .allSatisfy(l -> assertThat(l).matches("  [a-z-]+ +[A-Z].*\\."));
        assertThat(help.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void the_help_of_every_command_fits_a_hundred_columns() {
        for (String command : List.of(
                "demo",
                "import",
                "assess",
                "ask",
                "counters",
                "technique",
                "answers",
                "teach",
                "check",
                "export",
                "publish",
                "serve")) {
            Said help = run(command, "--help");

            assertThat(help.code()).isZero();
            assertThat(help.out().lines())
                    .describedAs(command)
                    .hasSizeGreaterThan(5)
                    .allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(100));
        }
    }

    private int kept() {
        try (Archive archive = Archive.open(Path.of(data()))) {
            return archive.logs().stream()
                    .mapToInt(log -> log.readings().size())
                    .sum();
        }
    }

    private String data() {
        return place.resolve("data").toString();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(place.resolve(name), text);
    }

    private static String nl() {
        return System.lineSeparator();
    }

    private static Said run(String... args) {
        return Said.to(args);
    }
}
