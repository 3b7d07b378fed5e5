package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;

/** Small tapes that argue like a coach. The findings are the test's own, so that the book may change. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AssessorTest {
    private static final World WORLD = World.with("""
            kb:gives-up-the-edge a skos:Concept , rl:Finding ;
              skos:prefLabel "gives up the edge"@en ; skos:definition "Gives up the edge on kick-outs."@en ;
              rl:polarity rl:gap ; rl:severity rl:high ; rl:line 0.20 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:sentence "Gave up the edge on {events} of {opportunities} kick-outs."@en ;
              rl:question "Was the outside his?"@en ;
              rl:duty kb:box-assignment , kb:contain-force-assignment ;
              rl:opportunity shape:kick-out-for-tests ; rl:event shape:edge-lost-for-tests .
            shape:kick-out-for-tests a sh:NodeShape ;
              sh:property [ sh:path rl:phase ; sh:hasValue "run" ] , [ sh:path rl:block ; sh:hasValue kb:kick-out-block ] .
            shape:edge-lost-for-tests a sh:NodeShape ;
              sh:property [ sh:path rl:result ; sh:hasValue kb:edge-lost-outside ] .

            kb:dead-feet a skos:Concept , rl:Finding ;
              skos:prefLabel "dead feet"@en ; skos:definition "Stops his feet on power."@en ;
              rl:polarity rl:gap ; rl:severity rl:high ; rl:line 0.25 ; rl:trueSide rl:above ; rl:minimum 8 ;
              rl:opportunity shape:alone-for-tests ; rl:event shape:dead-feet-for-tests .
            shape:alone-for-tests a sh:NodeShape ;
              sh:property [ sh:path rl:move ; sh:hasValue kb:power-move ] ;
              sh:not [ sh:property [ sh:path rl:help ; sh:hasValue kb:chip ] ] .
            shape:dead-feet-for-tests a sh:NodeShape ;
              sh:property [ sh:path rl:fault ; sh:hasValue kb:feet-stop-at-contact ] .

            kb:nothing-second a skos:Concept , rl:Finding ;
              skos:prefLabel "nothing second"@en ; skos:definition "Has no second move."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.50 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:opportunity shape:rush-for-tests ; rl:event shape:nothing-second-for-tests .
            shape:rush-for-tests a sh:NodeShape ; sh:property [ sh:path rl:phase ; sh:hasValue "pass-rush" ] .
            shape:nothing-second-for-tests a sh:NodeShape ;
              sh:not [ sh:property [ sh:path rl:move ; sh:hasValue kb:inside-move ] ] .

            kb:perhaps-his a skos:Concept , rl:Finding ;
              skos:prefLabel "perhaps his"@en ; skos:definition "May have been his."@en ;
              rl:polarity rl:conditional ; rl:severity rl:none ; rl:minimum 6 ; rl:duty kb:assignment-unknown ;
              rl:opportunity shape:kick-out-for-tests ; rl:event shape:edge-lost-for-tests .
            """);
    private static final String KICK_OUT = "phase=run block=kick-out-block ";
    private static final String LOST = KICK_OUT + "result=edge-lost-outside ";
    private static final String BOX = "assignment=box-assignment ";

    @Nested
    class Duty {
        @Test
        void a_rep_counts_only_under_a_duty_that_makes_it_his() {
            Judged judged = WORLD.judge(
                    "gives-up-the-edge",
                    WORLD.film()
                            .game("Opener", "")
                            .reps(4, LOST + BOX)
                            .reps(6, KICK_OUT + BOX)
                            .game("Harbor Game", "")
                            .reps(3, LOST + BOX)
                            .reps(5, KICK_OUT + "assignment=contain-force-assignment")
                            .reps(30, LOST + "assignment=spill-assignment"));

            assertThat(judged.outcome().rate()).isEqualTo(new Rate(7, 18));
            assertThat(judged.verdict()).isEqualTo(Verdict.CONFIRMED);
            assertThat(judged.bounds()).isEmpty();
            assertThat(judged.conditional()).isEmpty();
            assertThat(judged.games()).isEqualTo(2);
            assertThat(judged.sentence())
                    .isEqualTo("Gave up the edge on 7 of 18 kick-outs (likely range 22 to 58 %)."
                            + " About 97 in 100 that the true rate is over the line of 20 %."
                            + " More than half of it came against Opener.");
        }

        @Test
        void unknown_duty_gives_both_bounds_and_an_answer_for_each_duty() {
            Judged judged = WORLD.judge(
                    "gives-up-the-edge",
                    WORLD.film()
                            .game("Opener", "Pike")
                            .reps(6, KICK_OUT + BOX)
                            .reps(4, LOST + "hash=left-hash")
                            .game("Harbor Game", "Dunmore")
                            .reps(1, KICK_OUT + BOX)
                            .reps(5, LOST + "hash=left-hash"));

            assertThat(judged.outcome().rate()).isEqualTo(new Rate(0, 7));
            assertThat(judged.bounds())
                    .containsExactly(
                            new Judged.Bound("none", new Rate(0, 7), Verdict.WATCH),
                            new Judged.Bound("all", new Rate(9, 16), Verdict.CONFIRMED));
            assertThat(judged.conditional())
                    .containsExactly(
                            new Judged.Conditional("box-assignment", new Rate(9, 16), Verdict.CONFIRMED),
                            new Judged.Conditional("contain-force-assignment", new Rate(9, 16), Verdict.CONFIRMED),
                            new Judged.Conditional("another", new Rate(0, 7), Verdict.WATCH));
            assertThat(judged.evidence().reps()).hasSize(7).noneMatch(Evidence.Rep::event);
            assertThat(judged.sentence()).endsWith("Duty unknown on 9 more reps: if all were his, 9 of 16.");
        }

        @Test
        void nothing_but_unknown_duties_is_no_count_and_still_has_bounds() {
            Film film = WORLD.film().game("Opener", "").reps(9, LOST + "hash=left-hash");

            Judged judged = WORLD.judge("gives-up-the-edge", film);

            assertThat(judged.verdict()).isEqualTo(Verdict.NOT_ENOUGH_TAPE);
            assertThat(judged.bounds().get(1).rate()).isEqualTo(new Rate(9, 9));
        }

        @Test
        void a_finding_of_unknown_duty_counts_those_reps_alone_and_is_never_more_than_watched() {
            Film film = WORLD.film()
                    .game("Opener", "")
                    .reps(9, LOST + "assignment=assignment-unknown assignmentSource=unknown")
                    .game("Harbor Game", "")
                    .reps(9, LOST + "assignment=assignment-unknown assignmentSource=unknown")
                    .reps(5, LOST + BOX);

            Judged judged = WORLD.judge("perhaps-his", film);

            assertThat(judged.outcome().rate()).isEqualTo(new Rate(18, 18));
            assertThat(judged.verdict()).isEqualTo(Verdict.WATCH);
            assertThat(judged.outcome().probability()).isEmpty();
            assertThat(judged.bounds()).isEmpty();
        }
    }

    @Nested
    class Not_seen_is_not_absent {
        private static final String BULL = "phase=pass-rush move=bull-rush ";

        @Test
        void hidden_feet_say_nothing_of_the_feet() {
            Film film = WORLD.film()
                    .game("Opener", "")
                    .reps(3, BULL + "fault=feet-stop-at-contact")
                    .reps(5, BULL + "hidden=feet")
                    .reps(4, BULL + "hidden=faults");

            assertThat(WORLD.judge("dead-feet", film).outcome().rate()).isEqualTo(new Rate(3, 3));
        }

        @Test
        void hidden_eyes_hide_no_feet() {
            Film film = WORLD.film().game("Opener", "").reps(5, BULL + "hidden=eyes");

            assertThat(WORLD.judge("dead-feet", film).outcome().rate()).isEqualTo(new Rate(0, 5));
        }

        @Test
        void what_an_opportunity_excludes_must_have_been_charted() {
            Film film = WORLD.film()
                    .game("Opener", "")
                    .reps(2, BULL + "hidden=help")
                    .reps(3, BULL + "help=chip")
                    .reps(4, BULL + "help=slide-to");

            assertThat(WORLD.judge("dead-feet", film).outcome().rate()).isEqualTo(new Rate(0, 4));
        }

        @Test
        void an_event_that_is_an_absence_wants_the_exchange() {
            Film film = WORLD.film()
                    .game("Opener", "")
                    .reps(7, "phase=pass-rush hidden=exchange")
                    .reps(2, "phase=pass-rush move=bull-rush");

            assertThat(WORLD.judge("nothing-second", film).outcome().rate()).isEqualTo(new Rate(2, 2));
        }
    }

    @Nested
    class Left_out {
        @Test
        void reps_of_low_confidence_are_kept_and_not_counted() {
            Film film = WORLD.film()
                    .game("Opener", "")
                    .reps(7, LOST + BOX + "confidence=high")
                    .reps(3, LOST + BOX + "confidence=low")
                    .reps(2, "phase=drop confidence=high")
                    .reps(1, "phase=drop confidence=low");

            Assessment assessment = WORLD.assess(film);

            assertThat(assessment.reps()).isEqualTo(13);
            assertThat(assessment.leftOut()).isEqualTo(new Assessment.LeftOut(4, 2));
            assertThat(assessment
                            .finding("gives-up-the-edge")
                            .orElseThrow()
                            .outcome()
                            .rate())
                    .isEqualTo(new Rate(7, 7));
        }
    }

    @Nested
    class Games {
        @Test
        void one_game_makes_it_likely_at_most_and_says_what_is_missing() {
            Film film = WORLD.film().game("Opener", "Pike").reps(12, LOST + BOX);

            Judged judged = WORLD.judge("gives-up-the-edge", film);

            assertThat(judged.verdict()).isEqualTo(Verdict.LIKELY);
            assertThat(judged.outcome().needsAnotherGame()).isTrue();
            assertThat(judged.outcome().moreNeeded()).isEmpty();
            assertThat(judged.heavyOpponent()).contains("Pike");
            assertThat(judged.sentence())
                    .startsWith("Probably: gave up the edge on 12 of 12 kick-outs")
                    .contains("It hangs on one game; reps from another would settle it.")
                    .endsWith("More than half of it came against Pike.");
        }

        @Test
        void a_few_reps_say_how_many_more_are_wanted() {
            Film film = WORLD.film().game("Opener", "").reps(1, LOST + BOX).reps(2, KICK_OUT + BOX);

            Judged judged = WORLD.judge("gives-up-the-edge", film);

            assertThat(judged.outcome().moreNeeded()).hasValue(13);
            assertThat(judged.outcome().probability().orElseThrow()).isCloseTo(0.756, within(0.01));
            assertThat(judged.sentence())
                    .isEqualTo(
                            "Only 3 chances on tape, 1 event. Too few to judge; about 13 more would give an even chance"
                                    + " of settling it.");
        }

        @Test
        void no_chance_is_listed_with_zeros() {
            Judged judged = WORLD.judge("gives-up-the-edge", WORLD.film().game("Opener", ""));

            assertThat(judged.outcome().rate()).isEqualTo(new Rate(0, 0));
            assertThat(judged.verdict()).isEqualTo(Verdict.NOT_ENOUGH_TAPE);
            assertThat(judged.outcome().share()).isEmpty();
            assertThat(judged.sentence()).isEqualTo("No chance on tape yet, so nothing is known.");
        }
    }
}
