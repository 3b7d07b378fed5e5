package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;

@DisplayNameGeneration(ReplaceUnderscores.class)
class LogFaultsTest {
    @Nested
    @DisplayNameGeneration(ReplaceUnderscores.class)
    class The_header {
        @Test
        void may_leave_columns_out_but_not_those_every_log_needs() {
            assertThat(faults("rep,game,note\n1,2,3"))
                    .containsExactly(
                            "Line 1, prospect: the header lacks the column prospect, which every film log needs.",
                            "Line 1, phase: the header lacks the column phase, which every film log needs.");
        }

        @Test
        void names_the_nearest_of_an_unknown_column_and_reads_the_rows_all_the_same() {
            assertThat(faults("rep,prospect,game,phase,fautls,rep,\nr1,a,b,walk,,,"))
                    .containsExactly(
                            "Line 1, fautls: a film log has no column \"fautls\"; did you mean faults, date or"
                                    + " results?",
                            "Line 1, rep: the column stands in the header twice, at 1 and 6; keep one of them.",
                            "Line 1: column 7 has no name in the header; name it or take it out.",
                            "Line 2, phase: there is no \"walk\"; write pass-rush, run or drop.",
                            "Line 2, rep: every row needs a value here.");
        }

        @Test
        void may_be_written_with_capitals_and_blanks() {
            assertThat(faults("Rep,Prospect,Game,Phase,Get off,SECOND-MOVE-TIME\nr1,a,b,run,late,yes"))
                    .isEmpty();
        }

        @Test
        void tells_what_was_charted() {
            ReadResult result = SmallLog.read("rep,prospect,game,phase,faults,not_seen,stance\nr1,a,b,run,,,");

            assertThat(log(result).charted()).containsExactly("faults");
        }
    }

    @Nested
    @DisplayNameGeneration(ReplaceUnderscores.class)
    class Rows_that_contradict {
        @Test
        void a_row_of_the_wrong_length() {
            assertThat(SmallLog.faults(SmallLog.row().line("r9,Oren Halloway").read()))
                    .containsExactly("Line 3: this row has 2 cells and the header 48; look for a comma or a quote too"
                            + " many or too few.");
        }

        @Test
        void are_found_by_the_line_they_start_on_though_cells_above_run_over_lines() {
            assertThat(SmallLog.faults(SmallLog.row("note", "one\r\ntwo\nthree")
                            .line("")
                            .and("down", "5", "note", "a\nb")
                            .and("down", "6")
                            .read()))
                    .extracting(text -> text.substring(0, text.indexOf(',')))
                    .containsExactly("Line 6", "Line 8");
        }

        @Test
        void the_same_rep_twice() {
            assertThat(SmallLog.faults(
                            SmallLog.row().and("rep", "r1").and("rep", "R1").read()))
                    .containsExactly(
                            "Line 3, rep: this evaluator has the rep \"r1\" of this prospect and game already in line"
                                    + " 2; give one of them another name.",
                            "Line 4, rep: this evaluator has the rep \"R1\" of this prospect and game already in line 2"
                                    + " as \"r1\"; give one of them another name.");
        }

        @Test
        void but_two_evaluators_may_read_one_rep() {
            ReadResult result =
                    SmallLog.row().and("rep", "r1", "evaluator", "Second Eyes").read();

            assertThat(((ReadResult.Accepted) result).logs())
                    .extracting(Log::evaluator)
                    .containsExactly("unnamed", "Second Eyes");
        }

        @Test
        void two_names_with_one_address() {
            assertThat(SmallLog.faults(SmallLog.row("prospect", "Andr\u00e9 Vell")
                            .and("prospect", "Andre Vell")
                            .read()))
                    .containsExactly("Line 3, prospect: \"Andre Vell\" and \"Andr\u00e9 Vell\" in line 2 have one"
                            + " address, andre-vell; write one of them everywhere, or tell the two apart.");
            assertThat(SmallLog.faults(SmallLog.row("evaluator", "Room 1")
                            .and("evaluator", "room-1")
                            .read()))
                    .hasSize(1);
            assertThat(SmallLog.faults(
                            SmallLog.row("game", "Opener").and("game", "opener").read()))
                    .hasSize(1);
        }

        @Test
        void one_game_with_two_dates_opponents_or_levels() {
            assertThat(SmallLog.faults(SmallLog.row("date", "2025-10-03", "opponent", "Castor Bay", "level", "college")
                            .and("date", "2025-10-04")
                            .and("opponent", "Old Ferris")
                            .and("level", "high school")
                            .read()))
                    .containsExactly(
                            "Line 3, date: the game \"Mill Night\" has the date \"2025-10-03\" in line 2 and"
                                    + " \"2025-10-04\" here; if they are two games, give them two names.",
                            "Line 4, opponent: the game \"Mill Night\" has the opponent \"Castor Bay\" in line 2 and"
                                    + " \"Old Ferris\" here; if they are two games, give them two names.",
                            "Line 5, level: the game \"Mill Night\" has the level \"college\" in line 2 and \"high"
                                    + " school\" here; if they are two games, give them two names.");
        }
    }

    @Nested
    @DisplayNameGeneration(ReplaceUnderscores.class)
    class What_a_file_may_leave_out {
        private final Prospect listed = Prospect.named("p07", "Oren Halloway");

        @Test
        void the_evaluator() {
            FilmLogReader.Options options =
                    new FilmLogReader.Options(Optional.of("North Room"), Optional.empty(), List.of());

            assertThat(log(SmallLog.row().read(options)).evaluator()).isEqualTo("North Room");
            assertThat(log(SmallLog.row().read()).evaluator()).isEqualTo("unnamed");
        }

        @Test
        void what_another_row_says_of_the_game() {
            Log log = log(SmallLog.row().and("date", "2025-10-03").read());

            assertThat(log.game().id()).isEqualTo("mill-night-2025-10-03");
            assertThat(log.readings())
                    .extracting(Reading::rep)
                    .allMatch(rep -> rep.game().endsWith("2025-10-03"));
        }

        @Test
        void the_name_or_the_id_of_a_listed_prospect() {
            FilmLogReader.Options options =
                    new FilmLogReader.Options(Optional.empty(), Optional.empty(), List.of(listed));

            assertThat(log(SmallLog.row("prospect", "p07").and().read(options)))
                    .satisfies(log -> assertThat(log.prospect()).isEqualTo(listed))
                    .satisfies(log -> assertThat(log.readings()).hasSize(2));
        }

        @Test
        void but_not_which_of_two_men_of_one_name() {
            FilmLogReader.Options options = new FilmLogReader.Options(
                    Optional.empty(), Optional.empty(), List.of(listed, Prospect.named("p08", "Oren Halloway")));

            assertThat(SmallLog.faults(SmallLog.row().read(options)))
                    .containsExactly("Line 2, prospect: more than one listed prospect is called \"Oren Halloway\";"
                            + " write his id: p07 or p08.");
        }
    }

    @Test
    void good_rows_can_be_kept_and_bad_ones_come_back_with_their_reasons() throws IOException {
        String text =
                "rep,prospect,game,phase,snap,note\r\nr1,a,b,run,1,fine\r\nr2,a,b,walk,x,\"'=1+1, \"\"so\"\"\"\r\n"
                        + "r3,a,b,run\r\nr4,a,b,drop,2,\r\n";
        ReadResult.Rejected result = (ReadResult.Rejected) SmallLog.read(text);
        StringBuilder back = new StringBuilder();

        result.badRows().write(back);

        assertThat(result.good().get(0).readings())
                .extracting(reading -> reading.rep().rep())
                .containsExactly("r1", "r4");
        assertThat(back)
                .hasToString("rep,prospect,game,phase,snap,note,reason\r\n"
                        + "r2,a,b,walk,x,\"'=1+1, \"\"so\"\"\",\"phase: there is no \"\"walk\"\"; write pass-rush, run"
                        + " or drop. snap: \"\"x\"\" is no whole number; write digits only, such as 7.\"\r\n"
                        + "r3,a,b,run,this row has 4 cells and the header 6; look for a comma or a quote too many or"
                        + " too few.\r\n");
    }

    @Test
    void rows_given_back_can_be_mended_and_read_as_they_are() throws IOException {
        ReadResult.Rejected first = (ReadResult.Rejected) SmallLog.read("rep,prospect,game,phase\nr2,a,b,walk\n");
        StringBuilder back = new StringBuilder();
        first.badRows().write(back);

        ReadResult again = SmallLog.read(back.toString().replaceFirst("walk", "run"));

        assertThat(log(again).readings()).hasSize(1);
        assertThat(SmallLog.warnings(again))
                .containsExactly(
                        "Line 1, reason: this column holds the reasons of an earlier import and is passed" + " over.");
    }

    private static List<String> faults(String text) {
        return SmallLog.faults(SmallLog.read(text));
    }

    private static Log log(ReadResult result) {
        assertThat(SmallLog.faults(result)).isEmpty();
        return ((ReadResult.Accepted) result).logs().get(0);
    }
}
