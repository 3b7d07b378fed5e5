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

/** The lessons are whole: nothing of a kind is left without the parts a coach asks for first. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TeachingTest {
    private final Model facts = OntologyFiles.facts();

    @ParameterizedTest
    @CsvSource({
        "RushMove, cue hands footwork whenToUse beatenBy example coachingPoint",
        "Finish, cue hands footwork whenToUse beatenBy example coachingPoint",
        "RushGame, cue role containWho wrongWhen beatenBy example coachingPoint",
        "RushPhase, cue example coachingPoint",
        "Fault, looksLike likelyCause mend"
    })
    void every_term_of_a_kind_has_these_parts(String kind, String parts) {
        for (String part : parts.split(" ", -1)) {
            assertThat(without(facts, "rl:" + kind, part))
                    .as(kind + ", " + part)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"firstKey", "secondCue", "cue", "answer", "example"})
    void every_behavior_that_is_no_run_block_has_these_parts(String part) {
        assertThat(without(facts, "rl:BlockerBehavior FILTER NOT EXISTS { ?term a rl:RunBlock }", part))
                .isEmpty();
    }

    @Test
    void a_move_nobody_told_is_noticed() {
        Model more = OntologyFiles.with(facts, "kb:planted a skos:Concept , rl:RushMove .");
        assertThat(without(more, "rl:RushMove", "cue"))
                .singleElement()
                .asString()
                .contains("planted");
    }

    @Test
    void no_two_terms_are_told_in_the_same_words() {
        assertThat(rows(facts, """
                SELECT ?text WHERE { ?one rl:text ?text ; rl:about ?term . ?other rl:text ?text ; rl:about ?another .
                  FILTER (?term != ?another) }""")).isEmpty();
    }

    @Test
    void a_caution_stands_where_a_move_is_a_collision() {
        assertThat(rows(facts, """
                SELECT ?move WHERE { VALUES ?move { kb:bull-rush kb:speed-to-power kb:run-through kb:rip-through-chip
                    kb:split-the-double-team kb:forearm-lift kb:club kb:hump kb:play-the-cut kb:strip-at-ball kb:wrap-and-lower }
                  FILTER NOT EXISTS { ?told rl:about ?move ; rl:part rl:caution } }""")).isEmpty();
    }

    private static List<String> without(Model model, String kind, String part) {
        return rows(
                model,
                "SELECT ?term WHERE { ?term a " + kind
                        + " FILTER NOT EXISTS { ?told a rl:Teaching ; rl:about ?term ; rl:part rl:" + part + " } }");
    }

    private static List<String> rows(Model model, String query) {
        return OntologyFiles.rows(model, QueryFactory.create(OntologyFiles.PREFIXES + query));
    }
}
