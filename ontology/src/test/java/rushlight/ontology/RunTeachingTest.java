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

/** The lessons on the run, on drops, duties, skills, traits and spots are whole, and two-faced words are told apart. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RunTeachingTest {
    private static final String SHARED_LABEL = """
            SELECT DISTINCT ?term WHERE {
              ?term a skos:Concept ; skos:prefLabel|skos:altLabel|skos:hiddenLabel ?label .
              ?other skos:prefLabel|skos:altLabel|skos:hiddenLabel ?label . # the label first: it is what few terms share
              ?other a skos:Concept .
              FILTER (?term != ?other)
              FILTER NOT EXISTS { ?term a rl:Finding } FILTER NOT EXISTS { ?other a rl:Finding }
              FILTER NOT EXISTS { ?told rl:about ?term ; rl:part rl:howToTell }
            }""";

    private final Model facts = OntologyFiles.facts();

    @ParameterizedTest
    @CsvSource({
        "RunBlock, firstKey secondCue cue example answer",
        "RunFit, cue example coachingPoint wrongWhen progression",
        "Drop, depth eyes cue example coachingPoint",
        "Assignment, role cue ask",
        "Skill, seenBy trainedBy",
        "Trait, seenBy trainedBy",
        "Alignment, cue role coachingPoint",
        "Position, cue howToTell",
        "NumberingSystem, howToTell"
    })
    void every_term_of_a_kind_has_these_parts(String kind, String parts) {
        for (String part : parts.split(" ", -1)) {
            assertThat(without(facts, kind, part)).as(kind + ", " + part).isEmpty();
        }
    }

    @Test
    void a_block_nobody_told_is_noticed() {
        assertThat(without(planted("kb:planted a skos:Concept , rl:RunBlock ."), "RunBlock", "firstKey"))
                .singleElement()
                .asString()
                .contains("planted");
    }

    @Test
    void every_term_that_shares_a_label_says_how_to_tell() {
        assertThat(rows(facts, SHARED_LABEL)).isEmpty();
    }

    @Test
    void a_new_word_with_two_meanings_is_noticed() {
        assertThat(rows(planted("kb:planted a skos:Concept ; skos:altLabel \"rip\"@en ."), SHARED_LABEL))
                .singleElement()
                .asString()
                .contains("planted");
    }

    @Test
    void steps_are_numbered_from_one_without_a_gap() {
        assertThat(rows(facts, """
                SELECT ?step WHERE { ?step a rl:Teaching ; rl:about ?term ; rl:part ?part ; rl:order ?order .
                  FILTER (?order > 1)
                  FILTER NOT EXISTS { ?before rl:about ?term ; rl:part ?part ; rl:order ?last FILTER (?last = ?order - 1) } }""")).isEmpty();
    }

    @Test
    void a_caution_stands_where_a_fit_or_a_block_is_a_collision() {
        assertThat(rows(facts, """
                SELECT ?term WHERE { VALUES ?term { kb:wrong-arm kb:box-and-squeeze kb:dent-the-puller kb:stack-the-puller
                    kb:hold-the-double-team kb:play-through-crack kb:track-the-near-hip kb:cut-block kb:crack-block kb:trap-block
                    kb:kick-out-block kb:pull-and-kick-block kb:double-team kb:tackling-form kb:neck-shoulder-strength }
                  FILTER NOT EXISTS { ?told rl:about ?term ; rl:part rl:caution ; rl:text ?text
                    FILTER regex(?text, "certified|medical|trainer") } }""")).isEmpty();
    }

    @Test
    void each_low_block_has_a_note_for_every_set_of_rules() {
        assertThat(rows(facts, """
                SELECT ?term ?code WHERE { VALUES ?term { kb:cut-block kb:crack-block kb:double-team kb:wrong-arm }
                  VALUES ?code { "NFHS" "NCAA" "pro" }
                  FILTER NOT EXISTS { ?note rl:about ?term ; rl:part rl:ruleNote ; rl:code ?code } }""")).isEmpty();
    }

    private Model planted(String turtle) {
        return OntologyFiles.with(facts, turtle);
    }

    private static List<String> without(Model model, String kind, String part) {
        return rows(
                model,
                "SELECT ?term WHERE { ?term a rl:" + kind
                        + " FILTER NOT EXISTS { ?told a rl:Teaching ; rl:about ?term ; rl:part rl:" + part + " } }");
    }

    private static List<String> rows(Model model, String query) {
        return OntologyFiles.rows(model, QueryFactory.create(OntologyFiles.PREFIXES + query));
    }
}
