package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.rdf.model.Model;
import org.apache.jena.shacl.ShaclValidator;
import org.apache.jena.shacl.Shapes;
import org.apache.jena.shacl.validation.ReportEntry;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FindingsTest {
    private final Model facts = OntologyFiles.facts();
    private final Shapes shapes = Shapes.parse(OntologyFiles.load(List.of(OntologyFiles.file("findings.shapes.ttl")))
            .getGraph());

    /** Source: the second coach's review of the rush findings (common practice); `-` means no line, a note or a count. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            one-move-rusher | 20 | 0.70
            primary-without-counter | 8 | 0.70
            no-inside-counter | 10 | 0.60
            no-outside-answer | 10 | 0.50
            no-power-answer | 10 | 0.60
            no-first-touch-answer | 8 | 0.40
            no-pull-off-lean | 8 | 0.60
            hands-unpunished | 8 | 0.50
            wins-one-side-only | 20 | 0.20
            wins-one-path-only | 8 | 0.85
            power-stalls-feet-stop | 8 | 0.25
            plays-high | 12 | 0.25
            hands-land-late | 12 | 0.30
            swings-at-air | 10 | 0.25
            hands-outside-frame | 10 | 0.30
            hand-removal-without-finish | 8 | 0.40
            no-flatten-after-edge | 8 | 0.30
            runs-past-the-passer | 12 | 0.25
            wins-only-vs-tight-ends-and-backs | 6 | 0.67
            late-wins-only | 8 | 0.67
            no-early-win-chance | 6 | -
            slow-get-off | 20 | 0.20
            guesses-the-count | 30 | 0.05
            no-rush-plan | 20 | 0.70
            head-on-rusher | 15 | 0.15
            counter-without-threat | 8 | 0.30
            wasted-spin | 6 | 0.30
            swim-exposure | 8 | 0.25
            long-arm-collapses | 8 | 0.30
            slow-second-move | 8 | 0.40
            telegraphs-move | 10 | 0.20
            chip-erased | 8 | 0.60
            double-erased | 8 | 0.25
            contain-lost | 10 | 0.10
            too-passive-in-lane | 12 | 0.80
            stunt-timing | 8 | 0.30
            missed-finishes | 8 | 0.33
            no-ball-attack | 8 | 0.75
            no-hands-in-lane | 10 | 0.70
            screen-draw-blind | 8 | 0.50
            effort-fades | 15 | 0.20
            hands-penalties | 40 | 0.05
            alignment-bound | 12 | 0.92
            off-the-ground | 15 | 0.15
            eyes-down | 8 | 0.20
            situation-bound | 20 | 0.25
            run-rush-drop-off | 8 | 0.60
            scheme-fed-production | 8 | 0.60
            rounded-rush | 12 | 0.25
            """)
    void a_rush_finding_has_the_line_and_the_minimum_of_the_review(String slug, String minimum, String line) {
        assertThat(first("SELECT ?it WHERE { kb:" + slug + " rl:minimum ?it }")).isEqualTo(minimum);
        assertThat(first("SELECT ?it WHERE { kb:" + slug + " rl:line ?it }")).isEqualTo(line);
    }

    @Test
    void what_the_film_log_cannot_carry_is_not_a_finding() {
        assertThat(
                        rows(
                                "SELECT ?it WHERE { VALUES ?it { kb:no-setup kb:pre-snap-tell kb:untested } ?it a rl:Finding }"))
                .isEmpty();
    }

    @Test
    void a_rep_that_was_won_is_never_an_opening_left_untaken() {
        assertThat(rows("""
                        PREFIX sh: <http://www.w3.org/ns/shacl#>
                        SELECT ?it WHERE {
                          VALUES ?it { kb:no-inside-counter kb:no-outside-answer kb:no-power-answer
                            kb:no-first-touch-answer kb:no-pull-off-lean kb:hands-unpunished }
                          ?it rl:event ?event .
                          ?event sh:not [ sh:property [ sh:path rl:outcome ; sh:hasValue "won" ] ] }""")).hasSize(6);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Put the finding under a heading of finding-groups.ttl. | kb:plays-high skos:broader kb:high-pads .
            A finding is a gap, a strength, conditional or a note. | kb:plays-high rl:polarity rl:strength .
            A line is one share between 0 and 1. | kb:plays-high rl:line 0.9 .
            On which side of the line does the finding hold? Write rl:above, rl:below or rl:either. | kb:plays-high rl:trueSide rl:below .
            One minimum a finding: how many chances before it says anything? | kb:plays-high rl:minimum 20 .
            How much does it matter? Write rl:low, rl:moderate, rl:high or rl:none. | kb:plays-high rl:severity rl:low .
            Write rl:safety "yes" where it is a matter of safety; leave it out elsewhere. | kb:plays-high rl:safety "no" .
            Say in one sentence what the finding looks at and why it matters. | kb:plays-high rl:because "Again."@en .
            The sentence says its count: put {events} and {opportunities} in it. | kb:contain-lost rl:sentence "Often."@en .
            How is its count said? Give rl:sentence, with {events} and {opportunities} in it. | kb:planted a rl:Finding ; rl:opportunity shape:rep-won .
            Say once what else could explain it. | kb:plays-high rl:ruleOutFirst "Again."@en .
            What is trained is a skill, a trait, a move, a fit or a drop of the book. | kb:plays-high rl:trainFirst ( kb:over-set ) .
            The drill to start with must be a drill of the book. | kb:plays-high rl:starterDrill kb:rip .
            A duty must be an assignment of the book. | kb:plays-high rl:duty kb:rip .
            The if/then twin must be a finding of the book. | kb:plays-high rl:twin kb:rip .
            What it speaks against must be a finding of the book. | kb:plays-high rl:contradicts kb:rip .
            Its root must be a finding of the book. | kb:plays-high rl:explainedBy kb:rip .
            The situation it names is not written anywhere: add the shape, or mend the name. | kb:plays-high rl:event shape:nowhere .
            How many reps must fit the tape shape? Give it rl:atLeast, one or more. | kb:plays-high rl:tape shape:rep-won .
            Which row is the count: rl:primary, rl:largest, rl:others or rl:difference? | kb:plays-high rl:row rl:middle .
            A share lies above 0 and is at most 1. | kb:plays-high rl:exemptShare 1.5 .
            A finding needs columns of the film log: mend the name. | kb:plays-high rl:needs "color" .
            A count of events is one or more. | kb:plays-high rl:count 0 .
            A verdict can be held at "watch" or at "likely". | kb:plays-high rl:atMost "confirmed" .
            What it is made from must be findings of the book. | kb:plays-high rl:combines ( kb:rip ) .
            Which reps are his chance, and which of them count? Give one opportunity and one event, or name the findings it is made from. | kb:plays-high rl:event shape:rep-won .
            Nothing is said on fewer than six chances. | kb:plays-high rl:minimum 5 .
            A gap or a strength needs a line and a minimum, or a count of events. | kb:planted a rl:Finding ; rl:polarity rl:gap ; rl:line 0.5 .
            A line and its true side come together: the finding holds above it, below it or on either side. | kb:no-early-win-chance rl:line 0.5 .
            So many events within so many chances, and no line beside it: give rl:count and rl:within. | kb:plays-high rl:within 40 .
            What to train first and the drill to start with come together, or not at all. | kb:no-early-win-chance rl:starterDrill kb:track-line-run .
            Rows need a facet to split by; a difference needs its first and its second row. | kb:plays-high rl:splitBy rl:over .
            What exempts him: a share and the reps that must be in it, both. | kb:plays-high rl:exemptShare 0.2 .
            What the main row must show: a share and the reps that make it, both, and only where the other rows are counted. | kb:plays-high rl:mainShare 0.2 .
            A finding cannot be its own root: the chain of explanations comes back to it. | kb:slow-get-off rl:explainedBy kb:hands-land-late .
            """)
    void a_planted_fault_is_told_in_words(String message, String planted) {
        assertThat(messages(facts)).doesNotContain(message);
        assertThat(messages(OntologyFiles.with(facts, planted))).contains(message);
    }

    private List<String> messages(Model model) {
        return ShaclValidator.get().validate(shapes, model.getGraph()).getEntries().stream()
                .map(ReportEntry::message)
                .distinct()
                .toList();
    }

    private String first(String query) {
        return rows(query).stream()
                .findFirst()
                .map(row -> row.replaceAll("[^0-9.]*([0-9.]+).*", "$1"))
                .orElse("-");
    }

    private List<String> rows(String query) {
        return OntologyFiles.rows(facts, QueryFactory.create(OntologyFiles.PREFIXES + query));
    }
}
