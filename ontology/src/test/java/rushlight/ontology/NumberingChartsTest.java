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

/** The numbers beside the charts that were seen, where the charts contradict each other as well. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NumberingChartsTest {
    private final Model facts = OntologyFiles.facts();

    /** The source of each value stands beside it; the systems are the book's names for the families of charts. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            A | 7     | tight-end-inside         | defensive-technique-numbering-system
            A | 7     | tight-end-inside         | 7-technique
            A | 6     | tight-end-head-up        | defensive-technique-numbering-system
            A | 6     | tight-end-head-up        | football-coaches-directory-and-glossary
            A | 9     | tight-end-outside        | defensive-technique-numbering-system
            A | 8     | outside-tight-end-on-air | building-a-championship-football-team
            A | 5     | tackle-outside           | defensive-technique-numbering-system
            A | 4     | tackle-head-up           | defensive-technique-numbering-system
            A | 4i    | tackle-inside            | defensive-technique-numbering-system
            B | 6i    | tight-end-inside         | why-are-tight-ends-numbered-7-8-9
            B | 6     | tight-end-head-up        | why-are-tight-ends-numbered-7-8-9
            B | 7     | tight-end-outside        | why-are-tight-ends-numbered-7-8-9
            B | 8     | outside-tight-end-on-air | common-practice
            B | 9     | outside-tight-end-on-air | common-practice
            B | 9     | wing-outside             | common-practice
            B | 8     | wing-head-up             | common-practice
            B | 6     | tackle-outside-loose     | 6-technique
            C | 7     | tight-end-inside         | why-are-tight-ends-numbered-7-8-9
            C | 8     | tight-end-head-up        | why-are-tight-ends-numbered-7-8-9
            C | 9     | tight-end-outside        | why-are-tight-ends-numbered-7-8-9
            C | 6     | tackle-outside-loose     | defensive-line-basics-mind-the-gap
            C | 4     | tackle-inside            | defensive-line-basics-mind-the-gap
            D | 5 in  | tight-end-inside         | why-are-tight-ends-numbered-7-8-9
            D | 5 out | tackle-outside           | why-are-tight-ends-numbered-7-8-9
            """)
    void a_number_stands_where_the_chart_puts_it(String system, String number, String spot, String source) {
        assertThat(rows("SELECT ?label WHERE { ?label rl:number \"" + number + "\" ; rl:atPosition kb:" + spot
                        + " ; rl:numberingSystem/rl:systemName \"" + system + "\" . source:" + source
                        + " a rl:Source ; dct:date ?year }"))
                .hasSize(1);
    }

    /** Charts that contradict each other; source: the same charts, system by system. */
    @ParameterizedTest
    @CsvSource({"7, A, B", "6, A, C", "8, A, C", "9, A, B", "4, A, C"})
    void staffs_that_mean_different_spots_by_one_number_are_kept_apart(String number, String one, String other) {
        assertThat(rows("""
                        SELECT ?spot WHERE {
                          ?a rl:number "NUMBER" ; rl:atPosition ?spot ; rl:numberingSystem/rl:systemName "ONE" .
                          FILTER NOT EXISTS { ?b rl:number "NUMBER" ; rl:atPosition ?spot ;
                            rl:numberingSystem/rl:systemName "OTHER" } }""".replace("NUMBER", number).replace("ONE", one).replace("OTHER", other))
                                .size()
                        + rows("""
                        SELECT ?spot WHERE {
                          ?a rl:number "NUMBER" ; rl:atPosition ?spot ; rl:numberingSystem/rl:systemName "OTHER" .
                          FILTER NOT EXISTS { ?b rl:number "NUMBER" ; rl:atPosition ?spot ;
                            rl:numberingSystem/rl:systemName "ONE" } }""".replace("NUMBER", number).replace("ONE", one).replace("OTHER", other))
                                .size())
                .isPositive();
    }

    @Test
    void a_seven_with_no_system_stays_open() {
        assertThat(rows("""
                SELECT ?spot WHERE { ?label rl:number "7" ; rl:atPosition ?spot
                  FILTER NOT EXISTS { ?label rl:numberingSystem ?system } }""")).singleElement().asString().contains("ambiguous-tight-end-shade");
    }

    /** Source: an encyclopedia page has the 9 a couple of feet outside everybody, which other staffs call an 8 or a wide 9. */
    @Test
    void the_conflicts_of_the_charts_are_told_where_a_reader_meets_them() {
        for (String term :
                List.of("technique-1", "technique-4i", "technique-6", "technique-7", "technique-9", "wide-9")) {
            assertThat(rows("SELECT ?told WHERE { ?told rl:about kb:" + term + " ; rl:part rl:howToTell }"))
                    .as(term)
                    .isNotEmpty();
        }
    }

    private List<String> rows(String query) {
        return OntologyFiles.rows(facts, QueryFactory.create(OntologyFiles.PREFIXES + query));
    }
}
