package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Verdict;
import rushlight.film.Prospect;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.PositionGroup;

/** One man's rate beside those of his position group: a second sentence, and no verdict. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PeersTest {
    private static final String FINDING = "high-for-tests-often";
    private static final World WORLD = World.with("""
            kb:high-for-tests-often a skos:Concept , rl:Finding ;
              skos:prefLabel "high pads often"@en ;
              skos:definition "Plays high."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.20 ; rl:trueSide rl:above ; rl:minimum 6 ;
              rl:opportunity shape:run-for-peers ; rl:event shape:high-for-peers .
            shape:run-for-peers a sh:NodeShape ; sh:property [ sh:path rl:phase ; sh:hasValue "run" ] .
            shape:high-for-peers a sh:NodeShape ; sh:property [ sh:path rl:fault ; sh:hasValue kb:high-pads ] .
            """);
    private static final Map<String, PositionGroup> GROUPS = PositionGroup.byPosition(Ontology.packaged());

    /**
     * The invented group whose figures were computed in R: 3 of 7 is quoted as 28.6 %, its range by SciPy 0.127 to 0.474; the first
     * twelve of it have their middle at 0.2003 by SciPy.
     */
    private static final int[] EVENTS = {0, 1, 5, 0, 2, 6, 0, 1, 4, 1, 2, 7, 1, 0, 3, 2, 0, 5, 2, 1};

    private static final int[] CHANCES = {11, 9, 14, 8, 12, 13, 10, 9, 15, 8, 11, 14, 9, 10, 12, 13, 8, 10, 11, 9};

    @Test
    void among_twenty_ends_three_of_seven_is_best_guessed_at_29_percent_and_the_verdict_stays() {
        Assessment he = man("he", "Defensive-End", 3, 7);
        List<Assessment> league = league("defensive end", 20);
        league.add(he);

        PeerRate rate = beside(league, he);
        assertThat(rate.sentence())
                .isEqualTo("Among the 20 other ends on file with 8 chances or more, who average 19 %: with so few"
                        + " reps his true rate is best guessed at 29 % (likely range 13 to 47 %).");
        assertThat(he.finding(FINDING).orElseThrow().verdict()).isEqualTo(Verdict.LIKELY);
        assertThat(he.finding(FINDING).orElseThrow().outcome().rate().events()).isEqualTo(3);
    }

    @Test
    void he_is_no_peer_of_his_own() {
        Assessment he = man("he", "defensive end", 14, 14);
        List<Assessment> league = league("defensive end", 20);
        PeerRate alone = beside(league, he);
        league.add(he);

        assertThat(beside(league, he)).isEqualTo(alone);
    }

    @Test
    void where_his_own_group_is_too_few_the_wider_one_answers() {
        Assessment he = man("he", "DE", 3, 12);
        List<Assessment> league = league("defensive end", 9);
        assertThat(beside(league, he).sentence())
                .isEqualTo("Too few peers to read him beside: 9 of the 9 other edge defenders on file have 8 chances or"
                        + " more, and it takes 10.");
        league.add(man("standing", "Outside linebacker", 2, 10));
        assertThat(beside(league, he).sentence())
                .startsWith("Among the 10 other edge defenders on file with 8 chances or more")
                .contains("with his 3 of 12 his true rate is best guessed at");
    }

    @Test
    void a_position_the_book_does_not_know_stands_for_itself_and_none_for_nobody() {
        List<Assessment> league = league("Long snapper", 12);
        Assessment he = man("he", "long  snapper", 0, 0);
        assertThat(beside(league, he).sentence())
                .startsWith("Among the 12 other players listed as long  snapper on file")
                .contains("with no chance of his own his true rate is best guessed at 20 %");
        assertThat(beside(league, man("he", " ", 3, 7)).sentence())
                .isEqualTo("His position is not on file, so there is nobody to read him beside.");
    }

    private static PeerRate beside(List<Assessment> league, Assessment he) {
        return Optional.ofNullable(new Peers(GROUPS, league).beside(he).get(FINDING))
                .orElseThrow();
    }

    private static List<Assessment> league(String position, int men) {
        List<Assessment> league = new ArrayList<>();
        for (int i = 0; i < men; i++) {
            league.add(man("man-" + i, position, EVENTS[i], CHANCES[i]));
        }
        return league;
    }

    private static Assessment man(String id, String position, int events, int chances) {
        Assessment one = WORLD.assess(WORLD.film()
                .game("Opener", "")
                .reps(events, "phase=run fault=high-pads")
                .game("Second", "")
                .reps(chances - events, "phase=run"));
        OptionalDouble none = OptionalDouble.empty();
        return new Assessment(
                new Prospect(id, id, position, none, none, none, "", "", ""),
                one.reps(),
                one.games(),
                one.leftOut(),
                one.primary(),
                one.twoMoves(),
                one.findings(),
                one.conclusions(),
                one.likelyDuties(),
                one.roles());
    }
}
