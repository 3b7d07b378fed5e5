package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;

/** Differences of two rows, on a finding's own reps or on those of others, and counts of rare events. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ComparingTest {
    private static final World WORLD = World.with("""
            kb:better-side a skos:Concept , rl:Finding ;
              skos:prefLabel "better side"@en ;
              skos:definition "Wins far more from one side."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.20 ; rl:trueSide rl:either ; rl:minimum 12 ;
              rl:row rl:difference ; rl:first shape:better-side-over-the-left ; rl:second shape:better-side-over-the-right ;
              rl:opportunity shape:rush-for-tests ; rl:event shape:won-for-tests .
            kb:better-left a skos:Concept , rl:Finding ;
              skos:prefLabel "better left"@en ;
              skos:definition "Wins far more from the left."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.20 ; rl:trueSide rl:above ; rl:minimum 12 ;
              rl:row rl:difference ; rl:first shape:better-side-over-the-left ; rl:second shape:better-side-over-the-right ;
              rl:atMost "watch" ;
              rl:opportunity shape:rush-for-tests ; rl:event shape:won-for-tests .
            kb:high-pads-often a skos:Concept , rl:Finding ;
              skos:prefLabel "high pads often"@en ;
              skos:definition "Plays high."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.20 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:opportunity shape:run-for-tests ; rl:event shape:high-for-tests .
            kb:high-on-a-side a skos:Concept , rl:Finding ;
              skos:prefLabel "high on a side"@en ;
              skos:definition "Plays high far more on one side."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.25 ; rl:trueSide rl:either ; rl:minimum 8 ;
              rl:row rl:difference ; rl:first shape:better-side-over-the-left ; rl:second shape:better-side-over-the-right ;
              rl:pair [ rl:first shape:left-hash-for-tests ; rl:second shape:right-hash-for-tests ] ;
              rl:parents ( kb:high-pads-often ) .
            kb:helmet-first a skos:Concept , rl:Finding ;
              skos:prefLabel "helmet first"@en ;
              skos:definition "Leads with the helmet."@en ;
              rl:polarity rl:gap ; rl:severity rl:high ; rl:safety "yes" ; rl:count 2 ; rl:within 5 ;
              rl:opportunity shape:run-for-tests ; rl:event shape:high-for-tests .
            shape:rush-for-tests a sh:NodeShape ; sh:property [ sh:path rl:phase ; sh:hasValue "pass-rush" ] .
            shape:run-for-tests a sh:NodeShape ; sh:property [ sh:path rl:phase ; sh:hasValue "run" ] .
            shape:won-for-tests a sh:NodeShape ; sh:property [ sh:path rl:outcome ; sh:hasValue "won" ] .
            shape:high-for-tests a sh:NodeShape ; sh:property [ sh:path rl:fault ; sh:hasValue kb:high-pads ] .
            shape:better-side-over-the-left a sh:NodeShape ; sh:property [ sh:path rl:over ; sh:hasValue "left" ] .
            shape:better-side-over-the-right a sh:NodeShape ; sh:property [ sh:path rl:over ; sh:hasValue "right" ] .
            shape:left-hash-for-tests a sh:NodeShape ; sh:property [ sh:path rl:hash ; sh:hasValue kb:left-hash ] .
            shape:right-hash-for-tests a sh:NodeShape ; sh:property [ sh:path rl:hash ; sh:hasValue kb:right-hash ] .
            """);
    private static final String LEFT = "phase=pass-rush over=left outcome=";
    private static final String RIGHT = "phase=pass-rush over=right outcome=";

    private static Film sides(int leftWins, int rightWins) {
        return WORLD.film()
                .game("Opener", "")
                .reps(leftWins, LEFT + "won")
                .reps(15 - leftWins, LEFT + "lost")
                .reps(rightWins, RIGHT + "won")
                .reps(15 - rightWins, RIGHT + "lost")
                .game("Harbor Game", "")
                .reps(leftWins, LEFT + "won")
                .reps(15 - leftWins, LEFT + "lost")
                .reps(rightWins, RIGHT + "won")
                .reps(15 - rightWins, RIGHT + "lost");
    }

    @Nested
    class A_difference {
        @Test
        void is_confirmed_over_two_games_with_its_rows() {
            Judged judged = WORLD.judge("better-side", sides(12, 1));

            assertThat(judged.verdict()).isEqualTo(Verdict.CONFIRMED);
            assertThat(judged.finding().measure()).isEqualTo(Measure.DIFFERENCE);
            assertThat(judged.outcome().rows())
                    .containsExactly(
                            new Outcome.Row("over-the-left", new Rate(24, 30)),
                            new Outcome.Row("over-the-right", new Rate(2, 30)));
            assertThat(judged.sentence())
                    .isEqualTo("Wins far more from one side: 24 of 30 over the left against 2 of 30 over the right."
                            + " Better than 99 in 100 that the difference is over the line of 20 %.");
        }

        @Test
        void of_either_side_puts_the_larger_row_first() {
            assertThat(WORLD.judge("better-side", sides(1, 12))
                            .outcome()
                            .rows()
                            .get(0)
                            .value())
                    .isEqualTo("over-the-right");
            assertThat(WORLD.judge("better-left", sides(1, 12)).verdict()).isEqualTo(Verdict.CLEARED);
        }

        @Test
        void is_cleared_where_the_sides_are_alike_and_wants_its_minimum_on_each() {
            Film thin = WORLD.film().game("Opener", "").reps(40, LEFT + "won").reps(11, RIGHT + "lost");

            assertThat(WORLD.judge("better-side", sides(2, 2)).verdict()).isEqualTo(Verdict.CLEARED);
            assertThat(WORLD.judge("better-side", thin).verdict()).isEqualTo(Verdict.NOT_ENOUGH_TAPE);
            assertThat(WORLD.judge("better-side", thin).sentence())
                    .isEqualTo("Only 40 and 11 chances to compare. Too few to judge.");
        }

        @Test
        void that_is_never_above_watch_stays_there() {
            assertThat(WORLD.judge("better-left", sides(12, 1)).verdict()).isEqualTo(Verdict.WATCH);
        }
    }

    @Nested
    class Tried_on_another_finding {
        private static Film high(int left, int right) {
            Film film = WORLD.film();
            for (String game : new String[] {"Opener", "Harbor Game"}) {
                film.game(game, "")
                        .reps(left, "phase=run over=left hash=left-hash fault=high-pads")
                        .reps(10 - left, "phase=run over=left hash=right-hash")
                        .reps(right, "phase=run over=right hash=left-hash fault=high-pads")
                        .reps(10 - right, "phase=run over=right hash=right-hash");
            }
            return film;
        }

        @Test
        void it_counts_the_parents_reps_and_shows_the_most_telling_pair() {
            Judged judged = WORLD.judge("high-on-a-side", high(9, 0));

            assertThat(judged.outcome().parent()).contains("high-pads-often");
            assertThat(judged.outcome().rows())
                    .containsExactly(
                            new Outcome.Row("left-hash-for-tests", new Rate(18, 18)),
                            new Outcome.Row("right-hash-for-tests", new Rate(0, 22)));
            assertThat(judged.verdict()).isEqualTo(Verdict.CONFIRMED);
        }

        @Test
        void a_parent_that_is_cleared_is_not_asked() {
            Judged judged = WORLD.judge("high-on-a-side", high(0, 0));

            assertThat(WORLD.judge("high-pads-often", high(0, 0)).verdict()).isEqualTo(Verdict.CLEARED);
            assertThat(judged.verdict()).isEqualTo(Verdict.NOT_ENOUGH_TAPE);
            assertThat(judged.outcome().rate()).isEqualTo(new Rate(0, 0));
        }
    }

    @Nested
    class A_count {
        @Test
        void looks_at_the_latest_opportunities_alone() {
            Film early = WORLD.film()
                    .game("Opener", "")
                    .reps(2, "phase=run fault=high-pads")
                    .game("Harbor Game", "")
                    .reps(5, "phase=run over=left");

            assertThat(WORLD.judge("helmet-first", early).verdict()).isEqualTo(Verdict.CLEARED);
            assertThat(WORLD.judge("helmet-first", early).evidence().reps()).hasSize(5);
        }

        @Test
        void is_likely_from_one_game_and_confirmed_from_two() {
            Film one = WORLD.film().game("Opener", "").reps(2, "phase=run fault=high-pads");
            Film two = WORLD.film()
                    .game("Opener", "")
                    .reps(1, "phase=run fault=high-pads")
                    .game("Harbor Game", "")
                    .reps(1, "phase=run fault=high-pads");

            assertThat(WORLD.judge("helmet-first", one).verdict()).isEqualTo(Verdict.LIKELY);
            assertThat(WORLD.judge("helmet-first", two).verdict()).isEqualTo(Verdict.CONFIRMED);
        }
    }
}
