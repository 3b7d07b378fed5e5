package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Verdict;

/** What a person reads: the claim first, then how sure it is, then what would settle it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SentencesTest {
    private static final World WORLD = World.with("""
            kb:loses-it a skos:Concept , rl:Finding ;
              skos:prefLabel "loses it"@en ; rl:sentence "Lost the edge on {events} of {opportunities} kick-outs."@en ;
              rl:polarity rl:gap ; rl:severity rl:high ; rl:line 0.20 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:opportunity shape:run-for-tests ; rl:event shape:lost-for-tests .
            kb:holds-it a skos:Concept , rl:Finding ;
              skos:prefLabel "holds it"@en ; skos:definition "Holds the edge."@en ;
              rl:polarity rl:strength ; rl:severity rl:none ; rl:line 0.70 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:opportunity shape:run-for-tests ; rl:event shape:won-for-tests .
            kb:hardly-wins a skos:Concept , rl:Finding ;
              skos:prefLabel "hardly wins"@en ; skos:definition "Hardly wins."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.25 ; rl:trueSide rl:below ; rl:minimum 6 ;
              rl:opportunity shape:run-for-tests ; rl:event shape:won-for-tests .
            shape:run-for-tests a sh:NodeShape ; sh:property [ sh:path rl:phase ; sh:hasValue "run" ] .
            shape:lost-for-tests a sh:NodeShape ; sh:property [ sh:path rl:outcome ; sh:hasValue "lost" ] .
            shape:won-for-tests a sh:NodeShape ; sh:property [ sh:path rl:outcome ; sh:hasValue "won" ] .
            """);

    private static Film games(int lost, int won) {
        return WORLD.film()
                .game("Opener", "Pike")
                .reps(lost / 2, "phase=run outcome=lost")
                .reps(won / 2, "phase=run outcome=won")
                .game("Harbor Game", "Dunmore")
                .reps(lost - lost / 2, "phase=run outcome=lost")
                .reps(won - won / 2, "phase=run outcome=won");
    }

    @Test
    void a_confirmed_gap_is_said_outright() {
        assertThat(WORLD.judge("loses-it", games(10, 10)).sentence())
                .isEqualTo("Lost the edge on 10 of 20 kick-outs (likely range 32 to 68 %)."
                        + " Better than 99 in 100 that the true rate is over the line of 20 %.");
    }

    @Test
    void a_likely_gap_says_what_would_settle_it() {
        Judged judged = WORLD.judge("loses-it", games(3, 4));

        assertThat(judged.verdict()).isEqualTo(Verdict.LIKELY);
        assertThat(judged.sentence())
                .isEqualTo("Probably: lost the edge on 3 of 7 kick-outs (likely range 17 to 72 %)."
                        + " About 93 in 100 that the true rate is over the line of 20 %."
                        + " Roughly an even chance that 4 more settle it."
                        + " More than half of it came against Dunmore.");
    }

    @Test
    void an_open_question_stays_open() {
        assertThat(WORLD.judge("loses-it", games(2, 8)).sentence())
                .isEqualTo("Open: lost the edge on 2 of 10 kick-outs (likely range 6 to 45 %)."
                        + " About 53 in 100 that the true rate is over the line of 20 %.");
    }

    @Test
    void what_is_cleared_is_no_problem_and_no_strength() {
        assertThat(WORLD.judge("loses-it", games(1, 29)).sentence())
                .isEqualTo("No such problem on this tape: lost the edge on 1 of 30 kick-outs (likely range 1 to 12 %)."
                        + " Under 1 in 100 that the true rate is over the line of 20 %."
                        + " More than half of it came against Dunmore.");
        assertThat(WORLD.judge("holds-it", games(20, 4)).sentence())
                .isEqualTo("Not a strength on this tape: holds the edge: 4 of 24 (17 %, likely range 7 to 32 %)."
                        + " Under 1 in 100 that the true rate is over the line of 70 %.");
    }

    @Test
    void a_missing_skill_is_under_its_line() {
        assertThat(WORLD.judge("hardly-wins", games(20, 0)).sentence())
                .isEqualTo("Hardly wins: 0 of 20 (0 %, likely range 0 to 9 %)."
                        + " Better than 99 in 100 that the true rate is under the line of 25 %.");
    }

    @Test
    void chances_are_rounded_without_ever_saying_certain() {
        assertThat(Sentences.inHundred(0.9996)).isEqualTo("Better than 99 in 100");
        assertThat(Sentences.inHundred(0.0004)).isEqualTo("Under 1 in 100");
        assertThat(Sentences.inHundred(0.534)).isEqualTo("About 53 in 100");
    }
}
