package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.apache.jena.rdf.model.Model;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The integrity conditions of the SKOS Reference (W3C Recommendation, 18 August 2009: S9, S13, S14, S27, S46) and our
 * own, each as a query that finds offenders, and each seen to find a planted one.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class IntegrityTest {
    private static final String FOLDER = "src/test/resources/skos";

    private final Model facts = OntologyFiles.facts();

    static List<Path> conditions() {
        return OntologyFiles.endingWith(FOLDER, ".rq");
    }

    @ParameterizedTest
    @MethodSource("conditions")
    void the_book_offends_against_no_condition(Path condition) {
        assertThat(OntologyFiles.rows(facts, condition)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            s9-a-scheme-is-no-concept                      | kb:rip | kb:rip a skos:ConceptScheme .
            s13-one-label-has-one-role                     | kb:rip | kb:rip skos:hiddenLabel "rip"@en .
            s13-one-label-has-one-role                     | kb:rip | kb:rip skos:altLabel "rip"@en .
            s14-one-preferred-label-a-language             | kb:rip | kb:rip skos:prefLabel "the rip"@EN .
            s27-related-is-not-broader                     | kb:jab-step | kb:jab-step skos:related kb:rush-move-planted . kb:jab-step skos:broader kb:between . kb:between skos:broader kb:rush-move-planted .
            s27-related-is-not-broader                     | kb:jab-step | kb:setup-move skos:related kb:jab-step .
            s46-an-exact-match-is-no-wider-or-related-match | kb:rip | kb:rip skos:exactMatch kb:dip . kb:dip skos:exactMatch kb:dive . kb:dive skos:broadMatch kb:rip .
            s46-an-exact-match-is-no-wider-or-related-match | kb:rip | kb:rip skos:exactMatch kb:dip ; skos:relatedMatch kb:dip .
            broader-has-no-cycle                           | kb:setup-move | kb:setup-move skos:broader kb:jab-step .
            requires-has-no-cycle                          | kb:hand-clear | kb:rush-track rl:requires kb:arm-over . kb:hand-clear rl:requires kb:arm-over .
            every-term-named-is-there                      | kb:no-such-move | kb:rip rl:setsUp kb:no-such-move .
            """)
    void each_condition_finds_a_planted_offender(String condition, String offender, String planted) {
        Path query = OntologyFiles.file(FOLDER + "/" + condition + ".rq");
        String iri = offender.replace("kb:", "<https://rushlight.example/id/") + ">";
        assertThat(OntologyFiles.rows(OntologyFiles.with(facts, planted), query))
                .anySatisfy(row -> assertThat(row).contains(iri));
    }

    @Test
    void every_condition_has_an_offender_planted_against_it() {
        assertThat(conditions()).hasSize(8);
    }
}
