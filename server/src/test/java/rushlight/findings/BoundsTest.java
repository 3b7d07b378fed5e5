package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;

/** Reps that may have been his chance count in the bounds and nowhere else. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class BoundsTest {
    private static final World WORLD = World.with("""
            kb:too-wide a skos:Concept , rl:Finding ;
              skos:prefLabel "too wide"@en ; skos:definition "Is widened by fan blocks."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.20 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:opportunity shape:not-contain-for-tests ; rl:event shape:widened-for-tests ;
              rl:perhaps shape:contain-for-tests .
            shape:not-contain-for-tests a sh:NodeShape ;
              sh:property [ sh:path rl:block ; sh:hasValue kb:fan-block ] ;
              sh:not [ sh:property [ sh:path rl:assignment ; sh:hasValue kb:contain-force-assignment ] ] .
            shape:contain-for-tests a sh:NodeShape ;
              sh:property [ sh:path rl:block ; sh:hasValue kb:fan-block ] ,
                [ sh:path rl:assignment ; sh:hasValue kb:contain-force-assignment ] .
            shape:widened-for-tests a sh:NodeShape ;
              sh:property [ sh:path rl:result ; sh:hasValue kb:edge-widened ] .
            """);
    private static final String FAN = "phase=run block=fan-block ";

    @Test
    void a_rep_that_may_have_been_his_chance_is_in_the_upper_bound_alone() {
        Film film = WORLD.film()
                .game("Opener", "")
                .reps(4, FAN + "assignment=box-assignment")
                .reps(3, FAN + "assignment=contain-force-assignment result=edge-widened")
                .reps(2, FAN + "assignment=contain-force-assignment result=edge-widened hidden=results")
                .game("Harbor Game", "")
                .reps(3, FAN + "assignment=box-assignment")
                .reps(3, FAN + "assignment=contain-force-assignment result=edge-widened");

        Judged judged = WORLD.judge("too-wide", film);

        assertThat(judged.outcome().rate()).isEqualTo(new Rate(0, 7));
        assertThat(judged.bounds())
                .containsExactly(
                        new Judged.Bound("none", new Rate(0, 7), Verdict.WATCH),
                        new Judged.Bound("all", new Rate(6, 13), Verdict.CONFIRMED));
        assertThat(judged.conditional()).isEmpty();
    }

    @Test
    void without_such_reps_there_are_no_bounds() {
        Film film = WORLD.film().game("Opener", "").reps(7, FAN + "assignment=box-assignment");

        assertThat(WORLD.judge("too-wide", film).bounds()).isEmpty();
    }
}
