package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FileFaultsTest {
    private static final String HEADER = "rep,prospect,game,phase,note\n";
    private static final String QUOTE = ": a quote in this row is not closed where its cell ends; close it, and write"
            + " a quote that belongs to the text twice (\"\").";

    @Nested
    @DisplayNameGeneration(ReplaceUnderscores.class)
    class One_sentence_tells_of {
        @Test
        void an_empty_file() {
            String sentence =
                    "log.csv is empty; a film log starts with a row of column names: rep, prospect, game, ...";

            assertThat(faults("")).containsExactly(sentence);
            assertThat(faults("\uFEFF\r\n \r\n")).containsExactly(sentence);
        }

        @Test
        void a_header_without_reps() {
            assertThat(faults(HEADER)).containsExactly("log.csv has a header and no reps below it.");
        }

        @Test
        void a_byte_that_is_no_utf_8_with_its_line() {
            byte[] latin =
                    (HEADER + "r1,a,b,run,x\n" + "r2,a,b,run,caf\u00e9\n").getBytes(Charset.forName("ISO-8859-1"));

            assertThat(SmallLog.faults(SmallLog.read(latin)))
                    .containsExactly("Line 3: the byte 0xE9 is not UTF-8; save the file as \"CSV UTF-8\".");
        }

        @Test
        void a_character_cut_off_at_the_end() {
            byte[] text = (HEADER + "r1,a,b,run,caf\u00e9").getBytes(StandardCharsets.UTF_8);
            byte[] cut = Arrays.copyOf(text, text.length - 1);

            assertThat(SmallLog.faults(SmallLog.read(cut)))
                    .containsExactly("Line 2: the byte 0xC3 is not UTF-8; save the file as \"CSV UTF-8\".");
        }

        @Test
        void utf_16() {
            assertThat(SmallLog.faults(SmallLog.read((HEADER + "r1,a,b,run,").getBytes(StandardCharsets.UTF_16))))
                    .containsExactly("log.csv is written in UTF-16, not UTF-8; save it as \"CSV UTF-8\".");
        }

        @Test
        void a_spreadsheet() {
            assertThat(SmallLog.faults(SmallLog.read(new byte[] {'P', 'K', 3, 4, 20, 0})))
                    .containsExactly(
                            "log.csv is a spreadsheet or a packed file, not CSV; save the sheet as \"CSV UTF-8\".");
        }

        @Test
        void a_quote_that_is_never_closed() {
            assertThat(faults(HEADER + "r1,a,b,run,x\nr2,a,b,run,\"never closed\nr3,a,b,run,x\n"))
                    .containsExactly("Line 3" + QUOTE);
        }

        @Test
        void a_quote_that_closes_in_the_middle_of_a_later_cell() {
            assertThat(faults(HEADER + "r1,a,b,run,\"open\nr2,a,b,run,\"x\"\n")).containsExactly("Line 2" + QUOTE);
        }

        @Test
        void a_quote_never_closed_in_a_file_that_goes_on_and_on() {
            String more = "r2,a,b,run,x\n".repeat(200_000);

            assertThat(faults(HEADER + "r1,a,b,run,\"open\n" + more)).containsExactly("Line 2" + QUOTE);
        }

        @Test
        void column_names_parted_by_semicolons() {
            assertThat(faults("rep;prospect;game;phase\nr1;a;b;run"))
                    .containsExactly("Line 1: the column names are parted by semicolons; save the sheet as CSV with"
                            + " commas.");
        }

        @Test
        void column_names_parted_by_tabs() {
            assertThat(faults("rep\tprospect\tgame\tphase\nr1\ta\tb\trun"))
                    .containsExactly("Line 1: the column names are parted by tabs; save the sheet as CSV with commas.");
        }

        @Test
        void a_column_that_others_call_otherwise() {
            assertThat(faults("rep,Player,game,phase,To-Go\nr1,a,b,run,3"))
                    .containsExactly(
                            "Line 1, Player: a film log has no column \"Player\"; did you mean prospect?",
                            "Line 1, To-Go: a film log has no column \"To-Go\"; did you mean distance?",
                            "Line 1, prospect: the header lacks the column prospect, which every film log needs.");
        }
    }

    @Test
    void a_line_of_50_mb_is_told_after_the_first_of_them() {
        byte[] megabyte = "x".repeat(1_000_000).getBytes(StandardCharsets.UTF_8);
        List<InputStream> parts = new ArrayList<>();
        parts.add(new ByteArrayInputStream((HEADER + "r1,a,b,run,").getBytes(StandardCharsets.UTF_8)));
        for (int i = 0; i < 50; i++) {
            parts.add(new ByteArrayInputStream(megabyte));
        }
        InputStream huge = new SequenceInputStream(Collections.enumeration(parts));

        ReadResult result = FilmLogReader.of(SmallLog.BOOK).read("log.csv", huge, FilmLogReader.Options.none());

        assertThat(SmallLog.faults(result))
                .containsExactly("Line 2: this line is longer than 1,000,000 characters; a row of a film log has a few"
                        + " hundred.");
        assertThat(parts.subList(3, 51))
                .allSatisfy(part -> assertThat(part.available()).isEqualTo(1_000_000));
    }

    @Test
    void a_folder_and_a_missing_file_are_named(@TempDir Path folder) {
        assertThat(read(folder)).containsExactly(folder + " is a folder; name the CSV file in it that is to be read.");
        assertThat(read(folder.resolve("no.csv")))
                .containsExactly("There is no file " + folder.resolve("no.csv") + ".");
    }

    @Test
    void a_byte_order_mark_and_lines_of_any_system_are_taken(@TempDir Path folder) throws IOException {
        for (String end : List.of("\n", "\r\n", "\r")) {
            Path file = folder.resolve("log.csv");
            Files.writeString(file, "\uFEFFrep,prospect,game,phase" + end + "r1,a,b,run" + end + end);

            assertThat(read(file)).isEmpty();
        }
    }

    private static List<String> read(Path file) {
        return SmallLog.faults(FilmLogReader.of(SmallLog.BOOK).read(file, FilmLogReader.Options.none()));
    }

    private static List<String> faults(String text) {
        ReadResult result = SmallLog.read(text);
        if (result instanceof ReadResult.Rejected rejected) {
            assertThat(rejected.good()).isEmpty();
        }
        return SmallLog.faults(result);
    }
}
