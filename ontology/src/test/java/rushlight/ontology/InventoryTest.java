package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.jena.rdf.model.Model;
import org.apache.jena.rdf.model.Property;
import org.apache.jena.rdf.model.RDFNode;
import org.apache.jena.rdf.model.Resource;
import org.apache.jena.rdf.model.ResourceFactory;
import org.apache.jena.vocabulary.RDF;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class InventoryTest {
    private static final String RL = "https://rushlight.example/def#";
    private static final Pattern TERM = Pattern.compile("(?<![\\w-])rl:([A-Za-z][\\w-]*)");
    private static final Pattern QUOTED = Pattern.compile("\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\])*\"", Pattern.DOTALL);

    private final Model facts = OntologyFiles.facts();

    /** The registry's count of each kind, and of those it files under a second kind as well. */
    @ParameterizedTest
    @CsvSource({
        "Alignment, 24",
        "Assignment, 22",
        "Context, 111",
        "Drill, 121",
        "Drop, 17",
        "Finish, 6",
        "Landmark, 18",
        "PlayConcept, 29",
        "Position, 19",
        "RunFit, 47",
        "RunBlock, 35",
        "RunGap, 10",
        "RushFamily, 16",
        "RushGame, 13",
        "RushMove, 68",
        "RushPhase, 10",
        "Shade, 11",
        "Side, 19",
        "Skill, 63",
        "Stance, 10",
        "Surface, 11",
        "Trait, 33",
        "BlockerBehavior, 53",
        "Fault, 85",
        "Result, 52",
        "Opportunity, 45",
        "FindingGroup, 18",
        "Blocker, 15",
        "NumberingSystem, 4",
        "FitRule, 252",
        "Caveat, 192",
        "Claim, 53",
        "ContactLevel, 5",
        "Equipment, 19",
        "Hazard, 13",
        "Limit, 86",
        "LimitKind, 43",
        "LimitProfile, 16",
        "PlanNotice, 17",
        "PlanPreset, 2",
        "PositionGroup, 3",
        "PrerequisiteReason, 168",
        "PresetDay, 7",
        "Role, 6",
        "RoleTask, 13"
    })
    void every_term_of_the_registry_is_there(String kind, long expected) {
        assertThat(count(kind)).isEqualTo(expected);
    }

    @Test
    void every_pairing_is_there() {
        assertThat(pairings("rl:primary ?x ; rl:trigger ?y")).isEqualTo(472);
        assertThat(pairings("rl:primary ?x FILTER NOT EXISTS { ?p rl:trigger ?y }"))
                .isEqualTo(105);
        assertThat(pairings("rl:trigger ?x FILTER NOT EXISTS { ?p rl:primary ?y }"))
                .isEqualTo(189);
    }

    @Test
    void every_drill_and_every_skill_that_drills_are_chosen_for_is_there() {
        assertThat(facts.listSubjectsWithProperty(property("trainsFirst")).toList())
                .hasSize(114);
        assertThat(facts.listSubjectsWithProperty(property("judgedAt")).toList())
                .hasSize(64);
        assertThat(facts.listSubjectsWithProperty(property("phaseOrder")).toList())
                .hasSize(7);
    }

    /** By the measures of the skills: what each one counts, and the finding that counts the same. */
    @Test
    void the_skills_that_film_counts_say_by_which_findings() {
        Property shownBy = property("shownBy");
        assertThat(facts.listSubjectsWithProperty(shownBy).toList()).hasSize(36);
        assertThat(facts.listStatements(null, shownBy, (RDFNode) null).toList()).hasSize(45);
    }

    @Test
    void the_film_log_has_its_columns() {
        assertThat(count("Column")).isEqualTo(48);
        assertThat(count("StepFacet")).isEqualTo(7);
    }

    @Test
    void every_word_of_our_own_is_defined() {
        Set<String> unknown = new TreeSet<>();
        for (String folder : new String[] {"", "rules", "questions"}) {
            if (OntologyFiles.file(folder).toFile().isDirectory()) {
                for (String suffix : new String[] {".ttl", ".rules", ".rq"}) {
                    OntologyFiles.endingWith(folder, suffix)
                            .forEach(file -> TERM.matcher(QUOTED.matcher(OntologyFiles.text(file))
                                            .replaceAll("\"\""))
                                    .results()
                                    .map(found -> found.group(1))
                                    .filter(name -> !isDefined(name))
                                    .forEach(name -> unknown.add(file.getFileName() + ": rl:" + name)));
                }
            }
        }
        assertThat(unknown).isEmpty();
    }

    @Test
    void a_word_nobody_defined_is_noticed() {
        assertThat(isDefined("primary")).isTrue();
        assertThat(isDefined("column-get-off")).isTrue();
        assertThat(isDefined("primry")).isFalse();
    }

    private boolean isDefined(String name) {
        Resource term = ResourceFactory.createResource(RL + name);
        return facts.contains(term, RDF.type, (RDFNode) null);
    }

    private static Property property(String name) {
        return ResourceFactory.createProperty(RL, name);
    }

    private long count(String kind) {
        return facts.listSubjectsWithProperty(RDF.type, ResourceFactory.createResource(RL + kind))
                .toSet()
                .size();
    }

    private int pairings(String pattern) {
        return OntologyFiles.rows(
                        facts,
                        org.apache.jena.query.QueryFactory.create(
                                OntologyFiles.PREFIXES + "SELECT ?p WHERE { ?p a rl:Pairing ; " + pattern + " }"))
                .size();
    }
}
