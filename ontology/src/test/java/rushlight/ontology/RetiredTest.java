package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.rdf.model.Model;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.shacl.ShaclValidator;
import org.apache.jena.shacl.Shapes;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A term that goes is retired, not deleted. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RetiredTest {
    private static final String OWL = "PREFIX owl: <http://www.w3.org/2002/07/owl#>\n";
    private static final String SAMPLE = """
            @prefix owl: <http://www.w3.org/2002/07/owl#> .
            kb:arm-sling a skos:Concept , rl:RushMove ; skos:prefLabel "arm sling"@en ; owl:deprecated true ;
              dct:isReplacedBy kb:arm-grab-throw ; skos:historyNote "2026-11-25: the same act under another name."@en .
            kb:arm-sling--cue rl:about kb:arm-sling .
            kb:arm-grab-throw a skos:Concept , rl:RushMove ; skos:prefLabel "arm grab and throw"@en .
            """;

    private final Shapes shapes = Shapes.parse(OntologyFiles.load(List.of(OntologyFiles.file("retired.shapes.ttl")))
            .getGraph());

    @Test
    void a_term_retired_as_it_should_be_passes() {
        assertThat(messages(OntologyFiles.planted(SAMPLE))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            A term that is replaced is marked owl:deprecated true. | kb:old a skos:Concept ; skos:prefLabel "old"@en ; dct:isReplacedBy kb:arm-grab-throw ; skos:historyNote "2026-11-25: gone."@en .
            A term that goes keeps its labels, so that old film logs still find it. | kb:old a skos:Concept ; owl:deprecated true ; dct:isReplacedBy kb:arm-grab-throw ; skos:historyNote "2026-11-25: gone."@en .
            Say which one term of the book stands in the place of the term that goes. | kb:old a skos:Concept ; skos:prefLabel "old"@en ; owl:deprecated true ; skos:historyNote "2026-11-25: gone."@en .
            Say which one term of the book stands in the place of the term that goes. | kb:old a skos:Concept ; skos:prefLabel "old"@en ; owl:deprecated true ; dct:isReplacedBy kb:nowhere ; skos:historyNote "2026-11-25: gone."@en .
            The term that takes its place has gone as well: name one that is still used. | kb:old a skos:Concept ; skos:prefLabel "old"@en ; owl:deprecated true ; dct:isReplacedBy kb:arm-sling ; skos:historyNote "2026-11-25: gone."@en .
            Say in a history note when it went and why, with the date first: 2026-11-25: and so on. | kb:old a skos:Concept ; skos:prefLabel "old"@en ; owl:deprecated true ; dct:isReplacedBy kb:arm-grab-throw .
            A change note has the date first: 2026-11-25: and then what changed. | kb:arm-grab-throw skos:changeNote "Lately: changed."@en .
            A term that goes is used by nothing: move its pairings, rules, findings and links to the term that replaces it. | kb:p a rl:Pairing ; rl:counter kb:arm-sling .
            A term that goes is used by nothing: move its pairings, rules, findings and links to the term that replaces it. | kb:r a rl:FitRule ; rl:wrong kb:arm-sling .
            A term that goes is used by nothing: move its pairings, rules, findings and links to the term that replaces it. | kb:f a rl:Finding ; rl:trainFirst ( kb:arm-sling ) .
            A term that goes is used by nothing: move its pairings, rules, findings and links to the term that replaces it. | kb:rip skos:broader kb:arm-sling .
            """)
    void a_term_retired_badly_is_told_in_words(String message, String planted) {
        assertThat(messages(OntologyFiles.planted(SAMPLE + planted))).contains(message);
    }

    @Test
    void no_rule_names_a_term_that_went() {
        Model facts = OntologyFiles.facts();
        List<String> rules = OntologyFiles.endingWith("rules", ".rules").stream()
                .map(OntologyFiles::text)
                .toList();
        assertThat(rules).isNotEmpty();
        assertThat(retired(facts))
                .noneMatch(slug -> rules.stream().anyMatch(text -> text.contains("kb:" + slug + " ")));
        assertThat(retired(ModelFactory.createUnion(facts, OntologyFiles.planted(SAMPLE))))
                .contains("arm-sling");
    }

    private static List<String> retired(Model model) {
        return OntologyFiles.rows(
                        model,
                        QueryFactory.create(
                                OWL + OntologyFiles.PREFIXES + "SELECT ?it WHERE { ?it owl:deprecated true }"))
                .stream()
                .map(row -> row.replaceAll(".*/id/([\\w-]+).*", "$1"))
                .toList();
    }

    private List<String> messages(Model model) {
        return ShaclValidator.get().validate(shapes, model.getGraph()).getEntries().stream()
                .map(entry -> entry.message())
                .distinct()
                .toList();
    }
}
