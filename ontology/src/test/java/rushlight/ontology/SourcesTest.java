package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.rdf.model.Model;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Where it comes from: what is named is listed, what is listed is named, and nothing hangs in the air. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SourcesTest {
    private static final String NOT_LISTED = """
            SELECT DISTINCT ?source WHERE { ?it dct:source ?source FILTER NOT EXISTS { ?source a rl:Source } }""";
    private static final String WITHOUT_PARTICULARS = """
            SELECT ?source WHERE { ?source a rl:Source
              FILTER NOT EXISTS { ?source dct:title ?title ; dct:contributor ?who ; dct:date ?year ; rl:howSeen ?how
                FILTER (STRLEN(?who) > 2 && REGEX(?year, "^((19|20)[0-9][0-9]|undated)$") && STRLEN(?how) > 5) } }""";
    private static final String NEVER_NAMED = """
            SELECT ?source WHERE { ?source a rl:Source FILTER NOT EXISTS { ?it dct:source ?source } }""";
    private static final String NOTHING_LEADS_THERE = """
            SELECT ?term WHERE { ?term a skos:Concept
              FILTER NOT EXISTS { ?it ?link ?term FILTER (?link != rl:about) }
              FILTER NOT EXISTS { ?term ?link ?other . ?other a skos:Concept } }""";

    private final Model facts = OntologyFiles.facts();

    @Test
    void every_source_named_is_listed() {
        assertThat(rows(facts, NOT_LISTED)).isEmpty();
        assertThat(rows(planted("kb:rip dct:source source:planted ."), NOT_LISTED))
                .hasSize(1);
    }

    @Test
    void every_source_has_its_author_or_publisher_title_year_and_how_it_was_seen() {
        assertThat(rows(facts, WITHOUT_PARTICULARS)).isEmpty();
        assertThat(rows(planted("source:planted a rl:Source ; dct:title \"Planted\"@en ."), WITHOUT_PARTICULARS))
                .hasSize(1);
    }

    @Test
    void every_source_listed_is_named_somewhere() {
        assertThat(rows(facts, NEVER_NAMED)).isEmpty();
        assertThat(rows(planted("source:planted a rl:Source ."), NEVER_NAMED)).hasSize(1);
    }

    @Test
    void every_term_is_reached_by_some_relation() {
        assertThat(rows(facts, NOTHING_LEADS_THERE)).isEmpty();
        assertThat(rows(planted("kb:planted a skos:Concept . kb:told rl:about kb:planted ."), NOTHING_LEADS_THERE))
                .hasSize(1);
    }

    private Model planted(String turtle) {
        return OntologyFiles.with(facts, turtle);
    }

    private static List<String> rows(Model model, String query) {
        return OntologyFiles.rows(model, QueryFactory.create(OntologyFiles.PREFIXES + query));
    }
}
