package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.rdf.model.Model;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From which spot a move is used: common practice, worked out move by move and not from the files. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SpotsTest {
    private final Model facts = OntologyFiles.facts();

    @ParameterizedTest
    @CsvSource({
        "speed-rush, technique-3, false",
        "speed-rush, wide-9, true",
        "dip, technique-4i, false",
        "ghost, technique-3, false",
        "bend-the-corner, reduced-alignment, false",
        "cross-chop, technique-3, true",
        "cross-chop, technique-4i, false",
        "chop-club, technique-4i, false",
        "chop-club, wide-9, true",
        "bull-rush, technique-4i, true",
        "bull-rush, wide-9, true",
        "hump, technique-9, true",
        "hump, wide-9, false",
        "forearm-lift, technique-9, false",
        "split-the-double-team, technique-9, false",
        "split-the-double-team, technique-3, true",
        "late-spin, technique-3, false",
        "inside-spin, technique-3, true",
        "spin, technique-3, true",
        "peel, technique-3, false",
        "read-rush, wide-9, false",
        "inside-stick, reduced-alignment, false",
        "strip-at-ball, technique-3, true"
    })
    void a_move_is_used_from_the_spots_it_is_taught_from(String move, String spot, boolean used) {
        assertThat(facts.contains(
                        facts.createResource("https://rushlight.example/id/" + move),
                        facts.createProperty("https://rushlight.example/def#from"),
                        facts.createResource("https://rushlight.example/id/" + spot)))
                .isEqualTo(used);
    }

    /** A 4i sees the inside half of the tackle: moves that need a runway around the corner are not taught from there. */
    @Test
    void what_is_taught_from_inside_the_tackle_is_taught_from_over_the_guard_as_well() {
        assertThat(
                        rows(
                                "SELECT ?m WHERE { ?m rl:from kb:technique-4i FILTER NOT EXISTS { ?m rl:from kb:technique-3 } }"))
                .isEmpty();
    }

    @Test
    void every_edge_spot_has_moves_of_each_way_around_the_blocker() {
        assertThat(rows("""
                SELECT ?spot ?side WHERE {
                  VALUES ?spot { kb:technique-5 kb:technique-6 kb:technique-7 kb:technique-9 kb:wide-5 kb:wide-9 kb:ghost-9 }
                  VALUES ?side { "inside" "outside" "through" }
                  FILTER NOT EXISTS { ?m rl:from ?spot ; rl:side ?side } }""")).isEmpty();
    }

    private List<String> rows(String query) {
        return OntologyFiles.rows(facts, QueryFactory.create(OntologyFiles.PREFIXES + query));
    }
}
