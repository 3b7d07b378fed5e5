package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;

/** Findings that count by the values of a facet, and the main move. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RowsTest {
    private static final World WORLD = World.with("""
            kb:main-move-dies a skos:Concept , rl:Finding ;
              skos:prefLabel "main move dies"@en ;
              skos:definition "Loses with his main move."@en ;
              rl:polarity rl:gap ; rl:severity rl:high ; rl:line 0.50 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:splitBy rl:openingMove ; rl:row rl:primary ;
              rl:opportunity shape:rush-for-tests ; rl:event shape:lost-for-tests .
            kb:one-way a skos:Concept , rl:Finding ;
              skos:prefLabel "one way"@en ;
              skos:definition "Opens one way."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.60 ; rl:trueSide rl:above ; rl:minimum 10 ;
              rl:splitBy rl:openingMove ; rl:row rl:largest ; rl:exemptShare 0.15 ; rl:exemptEvent shape:won-for-tests ;
              rl:opportunity shape:rush-for-tests ; rl:event shape:rush-for-tests .
            kb:one-shoulder a skos:Concept , rl:Finding ;
              skos:prefLabel "one shoulder"@en ;
              skos:definition "Uses one shoulder."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.60 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:splitBy rl:fit ; rl:row rl:largest ; rl:among ( kb:spill kb:box-and-squeeze ) ;
              rl:tape shape:spill-tape-for-tests , shape:box-tape-for-tests ;
              rl:opportunity shape:run-for-tests ; rl:event shape:run-for-tests .
            kb:nowhere-else a skos:Concept , rl:Finding ;
              skos:prefLabel "nowhere else"@en ;
              skos:definition "Wins in one spot."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.92 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:splitBy rl:alignment ; rl:row rl:others ; rl:mainShare 0.25 ; rl:mainEvent shape:won-for-tests ;
              rl:opportunity shape:rush-for-tests ; rl:event shape:not-won-for-tests .
            shape:rush-for-tests a sh:NodeShape ; sh:property [ sh:path rl:phase ; sh:hasValue "pass-rush" ] .
            shape:run-for-tests a sh:NodeShape ; sh:property [ sh:path rl:phase ; sh:hasValue "run" ] .
            shape:lost-for-tests a sh:NodeShape ; sh:property [ sh:path rl:outcome ; sh:hasValue "lost" ] .
            shape:won-for-tests a sh:NodeShape ; sh:property [ sh:path rl:outcome ; sh:hasValue "won" ] .
            shape:not-won-for-tests a sh:NodeShape ;
              sh:not [ sh:property [ sh:path rl:outcome ; sh:hasValue "won" ] ] .
            shape:spill-tape-for-tests a sh:NodeShape ; rl:atLeast 3 ;
              sh:property [ sh:path rl:assignment ; sh:hasValue kb:spill-assignment ] .
            shape:box-tape-for-tests a sh:NodeShape ; rl:atLeast 3 ;
              sh:property [ sh:path rl:assignment ; sh:hasValue kb:box-assignment ] .
            """);
    private static final String RUSH = "phase=pass-rush openingMove=";

    @Nested
    class The_main_move {
        @Test
        void leads_clearly_over_ten_rushes() {
            Assessment assessment = WORLD.assess(WORLD.film()
                    .game("Opener", "")
                    .reps(8, RUSH + "bull-rush")
                    .reps(3, RUSH + "long-arm")
                    .reps(2, RUSH + "arm-over hidden=exchange")
                    .reps(4, "phase=pass-rush"));

            assertThat(assessment.primary()).contains(new Primary("bull-rush", new Rate(8, 11)));
            assertThat(assessment.twoMoves()).isEmpty();
        }

        @Test
        void is_not_named_from_nine() {
            Assessment assessment = WORLD.assess(WORLD.film().game("Opener", "").reps(9, RUSH + "bull-rush"));

            assertThat(assessment.primary()).isEmpty();
        }

        @Test
        void two_that_are_close_are_two_moves() {
            Assessment assessment = WORLD.assess(WORLD.film()
                    .game("Opener", "")
                    .reps(6, RUSH + "bull-rush")
                    .reps(5, RUSH + "long-arm")
                    .reps(1, RUSH + "arm-over"));

            assertThat(assessment.primary()).isEmpty();
            assertThat(assessment.twoMoves()).containsExactly("bull-rush", "long-arm");
        }

        @Test
        void three_that_are_close_are_none() {
            Assessment assessment = WORLD.assess(WORLD.film()
                    .game("Opener", "")
                    .reps(5, RUSH + "bull-rush")
                    .reps(4, RUSH + "long-arm")
                    .reps(4, RUSH + "arm-over"));

            assertThat(assessment.primary()).isEmpty();
            assertThat(assessment.twoMoves()).isEmpty();
        }

        @Test
        void is_the_row_that_counts() {
            Film film = WORLD.film()
                    .game("Opener", "")
                    .reps(4, RUSH + "bull-rush outcome=lost")
                    .reps(2, RUSH + "bull-rush outcome=won")
                    .reps(3, RUSH + "bull-rush hidden=result")
                    .reps(2, RUSH + "long-arm outcome=lost");

            Judged judged = WORLD.judge("main-move-dies", film);

            assertThat(judged.outcome().rate()).isEqualTo(new Rate(4, 6));
            assertThat(judged.outcome().rows())
                    .containsExactly(
                            new Outcome.Row("bull-rush", new Rate(4, 6)), new Outcome.Row("long-arm", new Rate(2, 2)));
        }

        @Test
        void unknown_leaves_nothing_to_count() {
            Film film = WORLD.film().game("Opener", "").reps(8, RUSH + "bull-rush outcome=lost");

            assertThat(WORLD.judge("main-move-dies", film).verdict()).isEqualTo(Verdict.NOT_ENOUGH_TAPE);
        }
    }

    @Nested
    class The_largest_row {
        @Test
        void is_counted_over_all_opportunities() {
            Judged judged = WORLD.judge("one-way", openers("", ""));

            assertThat(judged.finding().measure()).isEqualTo(Measure.SHARE);
            assertThat(judged.outcome().rate()).isEqualTo(new Rate(20, 24));
            assertThat(judged.verdict()).isEqualTo(Verdict.CONFIRMED);
        }

        @Test
        void is_only_watched_while_a_second_row_has_its_share_and_a_win() {
            assertThat(WORLD.judge("one-way", openers("outcome=lost", "outcome=won"))
                            .verdict())
                    .isEqualTo(Verdict.WATCH);
            assertThat(WORLD.judge("one-way", openers("outcome=won", "outcome=lost"))
                            .verdict())
                    .isEqualTo(Verdict.CONFIRMED);
        }

        private Film openers(String first, String second) {
            return WORLD.film()
                    .game("Opener", "")
                    .reps(10, (RUSH + "bull-rush " + first).trim())
                    .reps(2, (RUSH + "long-arm " + second).trim())
                    .game("Harbor Game", "")
                    .reps(10, (RUSH + "bull-rush " + first).trim())
                    .reps(2, (RUSH + "long-arm " + second).trim());
        }

        @Test
        void may_be_among_wider_values_and_waits_for_its_tape() {
            Film enough = WORLD.film()
                    .game("Opener", "")
                    .reps(4, "phase=run fit=wrong-arm assignment=spill-assignment")
                    .reps(3, "phase=run fit=spill assignment=box-assignment")
                    .reps(1, "phase=run fit=box-and-squeeze assignment=box-assignment");
            Film oneCall =
                    WORLD.film().game("Opener", "").reps(8, "phase=run fit=wrong-arm assignment=spill-assignment");

            assertThat(WORLD.judge("one-shoulder", enough).outcome().rate()).isEqualTo(new Rate(7, 8));
            assertThat(WORLD.judge("one-shoulder", enough).verdict()).isEqualTo(Verdict.LIKELY);
            assertThat(WORLD.judge("one-shoulder", oneCall).verdict()).isEqualTo(Verdict.NOT_ENOUGH_TAPE);
            assertThat(WORLD.judge("one-shoulder", oneCall).outcome().moreNeeded())
                    .isEmpty();
        }
    }

    @Nested
    class The_other_rows {
        @Test
        void count_together_and_only_beside_a_main_spot_that_wins() {
            Film winner = spots("outcome=won");
            Film loser = spots("outcome=lost");

            assertThat(WORLD.judge("nowhere-else", winner).outcome().rate()).isEqualTo(new Rate(30, 30));
            assertThat(WORLD.judge("nowhere-else", winner).verdict()).isEqualTo(Verdict.CONFIRMED);
            assertThat(WORLD.judge("nowhere-else", loser).verdict()).isEqualTo(Verdict.WATCH);
        }

        private Film spots(String main) {
            return WORLD.film()
                    .game("Opener", "")
                    .reps(20, "phase=pass-rush alignment=wide-9 " + main)
                    .reps(15, "phase=pass-rush alignment=technique-5 outcome=lost")
                    .game("Harbor Game", "")
                    .reps(20, "phase=pass-rush alignment=wide-9 " + main)
                    .reps(15, "phase=pass-rush alignment=technique-7 outcome=even");
        }
    }
}
